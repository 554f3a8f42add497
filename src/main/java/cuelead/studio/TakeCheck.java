package cuelead.studio;

import cuelead.rehearse.PlannedCall;
import cuelead.report.Refused;
import cuelead.steer.Told;
import cuelead.voice.MonoSound;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Whether a take can be reviewed at all, and what is doubtful about it. */
final class TakeCheck {
    /** Quieter than 60 dB below full scale nobody speaks. */
    static final double SILENT_PEAK = 0.001;

    /** So many flat tops a second are not only a knock. */
    private static final double FLAT_TOPS_A_SECOND = 2;
    /** A take may be broken off, but when most of its calls would lie behind its end, it is another one. */
    private static final double COVERED_PART = 0.5;

    private TakeCheck() {}

    /**
     * Refuses a take in which nothing can be found.
     *
     * @throws Refused when it is silent, or ends before most of the plan
     */
    static void check(Path file, MonoSound take, List<PlannedCall> plan) throws Refused {
        double peak = 0;
        for (float sample : take.samples()) {
            peak = Math.max(peak, Math.abs(sample));
        }
        if (peak < SILENT_PEAK) {
            throw new Refused(
                    file + " is silent: see whether the microphone is switched on and not muted, and record again.");
        }
        double seconds = take.lengthSeconds();
        long covered = plan.stream().filter(call -> call.seconds() < seconds).count();
        if (covered < COVERED_PART * plan.size()) {
            throw new Refused(file + " ends at " + Told.minutes(seconds) + ", but the plan goes on to "
                    + Told.minutes(plan.get(plan.size() - 1).seconds())
                    + ": name the plan, or the sheet and song, that this take was made with.");
        }
    }

    /** One sentence where the take is clipped. */
    static Optional<String> doubt(Path file, MonoSound take) {
        FlatTops tops = new FlatTops();
        tops.add(take.samples());
        return tops.count() > FLAT_TOPS_A_SECOND * take.lengthSeconds()
                ? Optional.of(file + " is clipped in " + tops.count()
                        + " places, so words may be misheard: turn the microphone down.")
                : Optional.empty();
    }
}
