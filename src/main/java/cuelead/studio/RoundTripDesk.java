package cuelead.studio;

import cuelead.report.Refused;
import cuelead.sound.Staged;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/** Measures the round trip of a pair of devices with its user's help, or takes the one of the last time. For one thread. */
final class RoundTripDesk {
    private static final String NOT_HEARD =
            "The eight clicks were not heard evenly: hold one side of the headphones close"
                    + " to the microphone, and be quiet meanwhile; or name a recording of them with --calibration.";

    private final RehearsalWait wait;
    private final Staged stream;

    RoundTripDesk(RehearsalWait wait, Staged stream) {
        this.wait = wait;
        this.stream = stream;
    }

    /**
     * Measures until it succeeds.
     *
     * @return empty when its user quits
     * @throws Refused where the clicks are not heard, and no key can be pressed to try again
     */
    Optional<RoundTrip> measure() throws Refused, InterruptedException {
        RehearsalView view = wait.view();
        RehearsalView.Order order = wait.answer(RehearsalView.Question.CLICKS);
        while (order == RehearsalView.Order.GO_ON) {
            Optional<RoundTrip> measured = once();
            if (measured.isPresent()) {
                view.tell(told(measured.get().seconds()) + ", measured now.");
                return measured;
            }
            if (!view.takesOrders()) {
                throw new Refused(NOT_HEARD);
            }
            order = wait.answer(RehearsalView.Question.CLICKS_AGAIN);
        }
        if (order == RehearsalView.Order.STOP) {
            return Optional.empty();
        }
        view.tell("The microphone counts as never late, so all calls will seem a little late.");
        return Optional.of(RoundTrip.of(0));
    }

    private Optional<RoundTrip> once() throws Refused, InterruptedException {
        RoundTripMeasure measure = new RoundTripMeasure(stream, wait.speakers(), wait.line());
        while (!measure.isOver()) {
            wait.view().order(wait.speakers(), RehearsalWait.POLL_MILLIS);
            wait.view().level(RehearsalWait.peak(measure.tick()));
        }
        measure.stop();
        return measure.result();
    }

    /** The last one of these devices, where there is one. */
    Optional<RoundTrip> last(RoundTrips kept, String microphone, String loudspeaker) {
        Optional<RoundTrips.Kept> last = kept.of(microphone, loudspeaker);
        last.ifPresent(of -> wait.view().tell(told(of.seconds()) + ", as on " + of.day() + "."));
        return last.map(of -> RoundTrip.of(of.seconds()));
    }

    /** Keeps one for the next time. */
    static void keep(RoundTrip measured, RoundTrips kept, String microphone, String loudspeaker) throws Refused {
        if (measured.offsetFrames().isPresent()) {
            kept.keep(microphone, loudspeaker, measured.seconds(), LocalDate.now(ZoneId.systemDefault()));
        }
    }

    private static String told(double seconds) {
        return String.format(Locale.ROOT, "The microphone is %.1f ms late", 1_000 * seconds);
    }
}
