package cuelead.sound;

/**
 * How loud each part of a mix is, and on which side.
 *
 * @param musicDb gain of the music where no call sounds
 * @param voiceDb gain of the calls
 * @param clickDb gain of the clicks
 * @param dip     how the music goes down under the calls
 * @param sides   on which sides the parts are heard
 */
public record Levels(double musicDb, double voiceDb, double clickDb, Dipping dip, Sides sides) {
    /** Nothing louder or softer than it is, and the usual dip. */
    public static final Levels EVEN = new Levels(0, 0, 0, 10);

    /** Everything on both sides, and the music goes down as a whole. */
    public Levels(double musicDb, double voiceDb, double clickDb, double dipDb) {
        this(musicDb, voiceDb, clickDb, new Dipping(dipDb, Dipping.Range.WHOLE), Sides.BOTH);
    }

    public Levels {
        if (!Double.isFinite(musicDb + voiceDb + clickDb)) {
            throw new IllegalArgumentException(
                    "levels in dB: music " + musicDb + ", voice " + voiceDb + ", click " + clickDb);
        }
    }

    /** How far the music goes down under the calls. */
    public double dipDb() {
        return dip.db();
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
        return new Levels(musicDb + db, voiceDb + db, clickDb + db, dip, sides);
    }

    /** The same with the calls louder or softer. */
    public Levels voiceLouderBy(double db) {
        return new Levels(musicDb, voiceDb + db, clickDb, dip, sides);
    }

    /** The same with another dip. */
    public Levels with(Dipping other) {
        return new Levels(musicDb, voiceDb, clickDb, other, sides);
    }

    /** The same on other sides. */
    public Levels with(Sides other) {
        return new Levels(musicDb, voiceDb, clickDb, dip, other);
    }
}
