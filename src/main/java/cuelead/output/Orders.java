package cuelead.output;

import java.util.concurrent.ConcurrentLinkedQueue;

/** Orders on their way to the audio thread, in order and without locks. */
final class Orders {
    private final ConcurrentLinkedQueue<Order> waiting = new ConcurrentLinkedQueue<>();

    /** From any thread. */
    void give(Order order) {
        waiting.add(order);
    }

    /** Carries out all that wait. Realtime-safe. */
    void obey(AlStream stream) {
        for (Order order = waiting.poll(); order != null; order = waiting.poll()) {
            order.on(stream);
        }
    }
}
