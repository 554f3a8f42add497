package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import java.util.List;
import java.util.Optional;

/** Waits before a rehearsal, while the microphone is listened to. */
final class RehearsalWait {
    /** The clocks of some devices are wrong when they have just been opened. */
    private static final double OPENED_SECONDS = 1.2;

    private RehearsalWait() {}

    /** Until both devices run evenly. */
    static void forDevices(RehearsalView view, Speakers speakers, MicrophoneLine line)
            throws Refused, InterruptedException {
        while (line.frames() == 0 || line.rate().secondsAt(speakers.heardFrame()) < OPENED_SECONDS) {
            view.key(speakers, Rehearsal.POLL_MILLIS);
            line.listen();
        }
        line.readAnew();
        forSeconds(1, view, speakers, line);
    }

    /** So long. */
    static void forSeconds(double seconds, RehearsalView view, Speakers speakers, MicrophoneLine line)
            throws Refused, InterruptedException {
        long until = line.frames() + line.rate().frameAt(seconds);
        while (line.frames() < until) {
            view.key(speakers, Rehearsal.POLL_MILLIS);
            line.listen();
        }
    }

    /** Until one of some keys is pressed: that key; the first of them at once where none can be pressed. */
    static String forKey(RehearsalView view, Speakers speakers, MicrophoneLine line, List<String> keys)
            throws Refused, InterruptedException {
        while (view.hasKeys()) {
            Optional<String> key = view.key(speakers, Rehearsal.POLL_MILLIS);
            line.listen();
            if (key.isPresent() && keys.contains(key.get())) {
                return key.get();
            }
        }
        return keys.get(0);
    }
}
