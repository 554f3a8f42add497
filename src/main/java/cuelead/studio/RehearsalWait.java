package cuelead.studio;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import java.util.Optional;

/** Waits before a rehearsal, while the microphone is listened to. */
record RehearsalWait(RehearsalView view, Speakers speakers, MicrophoneLine line) {
    static final long POLL_MILLIS = 10;
    /** The clocks of some devices are wrong when they have just been opened. */
    private static final double OPENED_SECONDS = 1.2;

    /** Until both devices run evenly. */
    void forDevices() throws Refused, InterruptedException {
        while (line.frames() == 0 || line.rate().secondsAt(speakers.heardFrame()) < OPENED_SECONDS) {
            once();
        }
        line.readAnew();
        long until = line.frames() + line.rate().frameAt(1);
        while (line.frames() < until) {
            once();
        }
    }

    /** A moment: an order that was given in it. */
    Optional<RehearsalView.Order> once() throws Refused, InterruptedException {
        Optional<RehearsalView.Order> order = view.order(speakers, POLL_MILLIS);
        view.level(peak(line.listen()));
        return order;
    }

    /** The answer to a question; to go on where none can be given. */
    RehearsalView.Order answer(RehearsalView.Question question) throws Refused, InterruptedException {
        view.ask(question);
        while (view.takesOrders()) {
            Optional<RehearsalView.Order> order = once();
            boolean isAnswer = order.isPresent()
                    && (order.get() != RehearsalView.Order.SKIP || question != RehearsalView.Question.BEGIN);
            if (isAnswer) {
                return order.get();
            }
        }
        return RehearsalView.Order.GO_ON;
    }

    static float peak(float[] heard) {
        float peak = 0;
        for (float sample : heard) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }
}
