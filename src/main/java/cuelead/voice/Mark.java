package cuelead.voice;

/**
 * Where a recording is felt.
 *
 * @param centreSeconds its perceptual centre, from the beginning of the file
 * @param lengthSeconds length of the file that was marked; another length is another recording
 * @param by            who set it
 */
public record Mark(double centreSeconds, double lengthSeconds, By by) {
    /** Half a millisecond for rounding, and what a decoder may add. */
    private static final double SAME_LENGTH_SECONDS = 0.002;

    /** Who set a mark. */
    public enum By {
        /** Cuelead, which may set it anew. */
        HEARING,
        /** The user, by ear: never changed. */
        EAR
    }

    /** Whether it was made for a recording of that length. */
    boolean fits(double otherSeconds) {
        return Math.abs(lengthSeconds - otherSeconds) <= SAME_LENGTH_SECONDS;
    }
}
