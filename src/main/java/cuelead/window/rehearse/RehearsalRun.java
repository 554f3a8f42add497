package cuelead.window.rehearse;

import cuelead.rehearse.Prompt;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.studio.PromptTimes;
import cuelead.studio.RehearsalDevices;
import cuelead.studio.RehearsalScene;
import cuelead.studio.RehearsalSession;
import cuelead.studio.RehearsalView;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** One rehearsal on a thread of its own; no call waits for it. */
final class RehearsalRun implements RehearsalView {
    private static final long MOST_ENDING_MILLIS = 3_000;

    private final PreparedDance dance;
    private final PromptTimes prompts;
    private final RehearsalSession session;
    private final Watcher watcher;
    private final BlockingQueue<Order> orders = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::run, "cuelead-rehearsal");

    /** Is told how it goes. Called on the thread of the rehearsal. */
    interface Watcher {
        void asked(Question question);

        void shown(RehearsalScene scene);

        /** The highest sample since the last time. */
        void heard(float peak);

        void told(String sentence);

        /** It is over; empty where nothing was recorded. */
        void over(Optional<RehearsalSession.Recorded> take);
    }

    RehearsalRun(
            PreparedDance dance, PromptTimes prompts, RehearsalDevices devices, boolean measures, Watcher watcher) {
        this.dance = dance;
        this.prompts = prompts;
        session = new RehearsalSession(devices, dance.kept(), OptionalDouble.empty(), measures, System.err::println);
        this.watcher = watcher;
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Gives an order. On any thread. */
    void order(Order order) {
        orders.add(order);
    }

    /** Stops it and waits until its take is whole. */
    void end() {
        order(Order.STOP);
        try {
            thread.join(MOST_ENDING_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the take is put right when the program ends
        }
    }

    private void run() {
        Optional<RehearsalSession.Recorded> take = Optional.empty();
        try {
            take = session.record(dance.sound(), dance.dance().calls(), prompts, () -> this);
        } catch (Refused refused) {
            watcher.told(refused.getMessage());
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
        } finally {
            watcher.over(take);
        }
    }

    @Override
    public void show(RehearsalScene scene) {
        watcher.shown(scene);
    }

    @Override
    public void prompt(Prompt prompt, double songSeconds) {
        // it is part of what is shown
    }

    @Override
    public void level(float peak) {
        watcher.heard(peak);
    }

    @Override
    public void tell(String sentence) {
        watcher.told(sentence);
    }

    @Override
    public void ask(Question question) {
        watcher.asked(question);
    }

    @Override
    public boolean takesOrders() {
        return true;
    }

    @Override
    public Optional<Order> order(Speakers speakers, long timeoutMillis) throws InterruptedException {
        return Optional.ofNullable(orders.poll(timeoutMillis, TimeUnit.MILLISECONDS));
    }

    @Override
    public void close() {
        // nothing was taken
    }
}
