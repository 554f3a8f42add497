package cuelead.studio;

import cuelead.rehearse.HeardWord;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.ReviewedCall;
import java.util.Locale;
import java.util.OptionalDouble;

/** How a call landed, to be read: {@code 120 ms late (0.21 of a beat)}. */
public final class Landed {
    private static final double MILLIS_A_SECOND = 1_000;

    private Landed() {}

    /** What became of a call. */
    public static String of(ReviewedCall call) {
        String off = leaning(
                call.errorMs().orElse(0),
                call.planned().map(PlannedCall::beatLength).orElse(OptionalDouble.empty()));
        return switch (call.kind()) {
            case MISSED -> "missed";
            case EXTRA -> "said besides";
            case WRONG -> "you said \"" + call.heard().map(HeardWord::word).orElse("") + "\", " + off;
            case OK, EARLY, LATE -> off;
        };
    }

    /** In milliseconds, and in beats where their length is known. */
    public static String leaning(double ms, OptionalDouble beatSeconds) {
        long rounded = Math.round(Math.abs(ms));
        if (rounded == 0) {
            return "exactly on time";
        }
        String beats = beatSeconds.isPresent()
                ? String.format(
                        Locale.ROOT, " (%.2f of a beat)", Math.abs(ms) / MILLIS_A_SECOND / beatSeconds.getAsDouble())
                : "";
        return rounded + " ms " + (ms < 0 ? "early" : "late") + beats;
    }
}
