package cuelead.sound;

/**
 * How loud each part of a mix is, and on which side.
 *
 * @param musicDb gain of the music where no call sounds
 * @param voiceDb gain of the calls
 * @param clickDb gain of the clicks
 * @param dipDb   how far the music goes down under the calls; 0 or more
 * @param sides   on which sides the parts are heard
 */
public record Levels(double musicDb, double voiceDb, double clickDb, double dipDb, Sides sides) {
    /** Nothing louder or softer than it is, and the usual dip. */
    public static final Levels EVEN = new Levels(0, 0, 0, 10);

    /** Everything on both sides. */
    public Levels(double musicDb, double voiceDb, double clickDb, double dipDb) {
        this(musicDb, voiceDb, clickDb, dipDb, Sides.BOTH);
    }

    public Levels {
        if (!Double.isFinite(musicDb + voiceDb + clickDb) || !(dipDb >= 0 && dipDb <= 100)) {
            throw new IllegalArgumentException("levels in dB out of range: music " + musicDb + ", voice " + voiceDb
                    + ", click " + clickDb + ", dip " + dipDb + " [0, 100]");
        }
    }

    public double musicGain() {
        return Decibels.gain(musicDb);
    }

    public double voiceGain() {
        return Decibels.gain(voiceDb);
    }

    public double clickGain() {
        return Decibels.gain(clickDb);
    }

    /** The same with everything louder or softer. */
    public Levels louderBy(double db) {
        return new Levels(musicDb + db, voiceDb + db, clickDb + db, dipDb, sides);
    }

    /** The same with the calls louder or softer. */
    public Levels voiceLouderBy(double db) {
        return new Levels(musicDb, voiceDb + db, clickDb, dipDb, sides);
    }

    /** The same with another dip. */
    public Levels withDip(double otherDb) {
        return new Levels(musicDb, voiceDb, clickDb, otherDb, sides);
    }

    /** The same on other sides. */
    public Levels with(Sides other) {
        return new Levels(musicDb, voiceDb, clickDb, dipDb, other);
    }
}
