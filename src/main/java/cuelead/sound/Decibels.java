package cuelead.sound;

/** Decibels to factors. {@code StrictMath}, so that a mix has equal samples on every machine. */
final class Decibels {
    private static final double NEPERS_PER_DB = StrictMath.log(10) / 20;

    private Decibels() {}

    /** The factor on samples. */
    static double gain(double db) {
        return StrictMath.exp(db * NEPERS_PER_DB);
    }

    /** The factor on power. */
    static double powerGain(double db) {
        return StrictMath.exp(db * 2 * NEPERS_PER_DB);
    }

    /** The decibels of a ratio of powers. */
    static double ofPowerRatio(double ratio) {
        return 10 * StrictMath.log10(ratio);
    }
}
