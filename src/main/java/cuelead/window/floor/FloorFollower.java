package cuelead.window.floor;

import cuelead.sound.Speakers;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.View;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;

/** Follows what plays on the floor view; orders come from any thread. */
final class FloorFollower implements View {
    private final Queue<Order> orders = new ConcurrentLinkedQueue<>();
    private final FloorScenes scenes = new FloorScenes();
    private final Consumer<FloorScene> shown;

    /** @param shown is given each scene, on the thread that plays */
    FloorFollower(Consumer<FloorScene> shown) {
        this.shown = shown;
    }

    void ask(Order order) {
        orders.add(order);
    }

    @Override
    public boolean isDrawnAtEveryLook() {
        return true;
    }

    @Override
    public void follow(Moment moment) {
        shown.accept(scenes.scene(moment));
    }

    @Override
    public void tell(String sentence) {
        // moments tell it
    }

    @Override
    public void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
        if (orders.isEmpty()) {
            speakers.awaitEnd(timeoutMillis);
        }
    }

    @Override
    public Optional<Order> order() {
        return Optional.ofNullable(orders.poll());
    }

    @Override
    public void close() {
        // the window stays
    }
}
