package cuelead.window.floor;

import cuelead.sound.Speakers;
import cuelead.steer.Ask;
import cuelead.steer.Moment;
import cuelead.steer.View;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BiConsumer;

/** Follows what plays on the floor view; orders come from any thread. */
final class FloorFollower implements View {
    private final Queue<Ask> orders = new ConcurrentLinkedQueue<>();
    private final FloorScenes scenes = new FloorScenes();
    private final BiConsumer<FloorScene, Moment> shown;

    /** @param shown is given each scene with the moment that it is of, on the thread that plays */
    FloorFollower(BiConsumer<FloorScene, Moment> shown) {
        this.shown = shown;
    }

    void ask(Ask ask) {
        orders.add(ask);
    }

    @Override
    public boolean isDrawnAtEveryLook() {
        return true;
    }

    @Override
    public void follow(Moment moment) {
        shown.accept(scenes.scene(moment), moment);
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
    public Optional<Ask> order() {
        return Optional.ofNullable(orders.poll());
    }

    @Override
    public void close() {
        // the window stays
    }
}
