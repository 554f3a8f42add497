package cuelead.time;

/**
 * How fast a song is played: frames of the song in {@value #UNIT} frames of what is heard, so that places are exact
 * whole numbers. 0.4 to 1.25.
 */
public record Speed(int songFramesInUnit) {
    /** Parts that one frame of the song is counted in. */
    public static final int UNIT = 10_000;

    public static final Speed SLOWEST = new Speed(4_000);
    public static final Speed ORIGINAL = new Speed(UNIT);
    public static final Speed FASTEST = new Speed(12_500);

    public Speed {
        if (songFramesInUnit < 4_000 || songFramesInUnit > 12_500) {
            throw new IllegalArgumentException("speed out of range [0.4, 1.25]: " + songFramesInUnit + "/" + UNIT);
        }
    }

    /** Whether a number, rounded to {@link #UNIT} parts, is a speed. */
    public static boolean isSpeed(double ratio) {
        return Math.round(ratio * UNIT) >= SLOWEST.songFramesInUnit
                && Math.round(ratio * UNIT) <= FASTEST.songFramesInUnit;
    }

    /** The nearest speed to a ratio in range. */
    public static Speed of(double ratio) {
        return new Speed(Math.toIntExact(Math.round(ratio * UNIT)));
    }

    /** Seconds of the song in a second of what is heard. */
    public double ratio() {
        return (double) songFramesInUnit / UNIT;
    }

    public boolean isOriginal() {
        return songFramesInUnit == UNIT;
    }
}
