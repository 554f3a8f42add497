package cuelead.sound;

/**
 * How the music goes down under the calls.
 *
 * @param db    how far; 0 or more
 * @param range how much of it
 */
public record Dipping(double db, Range range) {
    /** What words are told apart by, in Hz: most of the weight of the speech intelligibility index (ANSI S3.5-1997). */
    public static final double BAND_FROM_HZ = 1_000;

    public static final double BAND_TO_HZ = 4_000;

    private static final double MOST_DB = 100;

    /** What of the music goes down. */
    public enum Range {
        WHOLE,
        /** Only what covers speech; the bass and the cymbals go on. */
        SPEECH_BAND
    }

    public Dipping {
        if (!(db >= 0 && db <= MOST_DB)) {
            throw new IllegalArgumentException("a dip by " + db + " dB [0, " + MOST_DB + "]");
        }
    }

    /** The same by another depth. */
    public Dipping by(double otherDb) {
        return new Dipping(otherDb, range);
    }
}
