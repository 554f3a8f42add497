package cuelead.rehearse;

/**
 * Help with a call while it is rehearsed.
 *
 * @param call           what is to be called
 * @param breatheSeconds when to breathe for it, seconds of the song
 */
public record Prompt(PlannedCall call, double breatheSeconds) {
    /** Where nothing is known of beats. */
    private static final double USUAL_SECONDS = 0.7;
    /** Less is no time to read a word and to breathe. */
    private static final double SHORTEST_SECONDS = 0.5;

    /** A beat before the call. */
    static Prompt of(PlannedCall call) {
        double beat = call.beatLength().orElse(USUAL_SECONDS);
        return new Prompt(call, call.seconds() - Math.max(SHORTEST_SECONDS, beat));
    }
}
