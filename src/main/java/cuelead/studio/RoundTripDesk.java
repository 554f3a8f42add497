package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.sound.Staged;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Measures the round trip of a pair of devices with its user's help, or takes the one of the last time. For one thread. */
final class RoundTripDesk {
    private static final String SKIP = "s";
    private static final String NOT_HEARD =
            "The eight clicks were not heard evenly: hold one side of the headphones close"
                    + " to the microphone, and be quiet meanwhile";
    private static final List<String> WHAT_TO_DO = List.of(
            "How late is this microphone? Hold one side of the headphones close to it: eight soft clicks are played.",
            "Enter plays them, s goes on without, q quits.");

    private final RehearsalView view;
    private final Speakers speakers;
    private final MicrophoneLine line;
    private final Staged stream;

    RoundTripDesk(RehearsalView view, Speakers speakers, MicrophoneLine line, Staged stream) {
        this.view = view;
        this.speakers = speakers;
        this.line = line;
        this.stream = stream;
    }

    /**
     * Measures until it succeeds.
     *
     * @return empty when its user quits
     * @throws Refused where the clicks are not heard, and no key can be pressed to try again
     */
    Optional<RoundTrip> measure() throws Refused, InterruptedException {
        WHAT_TO_DO.subList(0, view.hasKeys() ? WHAT_TO_DO.size() : 1).forEach(view::tell);
        while (true) {
            String key = RehearsalWait.forKey(view, speakers, line, List.of("enter", SKIP, RawKeys.QUIT));
            if (key.equals(RawKeys.QUIT)) {
                return Optional.empty();
            }
            if (key.equals(SKIP)) {
                view.tell("The microphone counts as never late, so all calls will seem a little late.");
                return Optional.of(RoundTrip.of(0));
            }
            Optional<RoundTrip> measured = once();
            if (measured.isPresent()) {
                view.tell(told(measured.get().seconds()) + ", measured now.");
                return measured;
            }
            if (!view.hasKeys()) {
                throw new Refused(NOT_HEARD + "; or name a recording of them with --calibration.");
            }
            view.tell(NOT_HEARD + ". Enter plays them again, s goes on without, q quits.");
        }
    }

    private Optional<RoundTrip> once() throws Refused, InterruptedException {
        RoundTripMeasure measure = new RoundTripMeasure(stream, speakers, line);
        while (!measure.isOver()) {
            view.key(speakers, Rehearsal.POLL_MILLIS);
            measure.tick();
        }
        measure.stop();
        return measure.result();
    }

    /** The last one of these devices, where there is one. */
    Optional<RoundTrip> last(RoundTrips kept, String microphone, String loudspeaker) {
        Optional<RoundTrips.Kept> last = kept.of(microphone, loudspeaker);
        last.ifPresent(of -> view.tell(told(of.seconds()) + ", as on " + of.day() + "; --measure measures it anew."));
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
