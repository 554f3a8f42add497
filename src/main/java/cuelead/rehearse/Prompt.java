package cuelead.rehearse;

/**
 * Help with a call while it is rehearsed.
 *
 * @param call           what is to be called
 * @param breatheSeconds when to breathe for it, seconds of the song
 */
public record Prompt(PlannedCall call, double breatheSeconds) {
    private static final double USUAL_SECONDS = 0.7;
    private static final double SHORTEST_SECONDS = 0.5;
    private static final double LONGEST_SECONDS = 1;

    /** A beat before the call, where a beat is known and neither too short to breathe in nor long. */
    static Prompt of(PlannedCall call) {
        double beat = call.beatLength().orElse(USUAL_SECONDS);
        return new Prompt(call, call.seconds() - Math.max(SHORTEST_SECONDS, Math.min(LONGEST_SECONDS, beat)));
    }
}
