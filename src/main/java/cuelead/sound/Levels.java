package cuelead.sound;

/**
 * How loud each part of a mix is.
 *
 * @param musicDb gain of the music where no call sounds
 * @param voiceDb gain of the calls
 * @param clickDb gain of the clicks
 * @param dipDb   how far the music goes down under the calls; 0 or more
 */
public record Levels(double musicDb, double voiceDb, double clickDb, double dipDb) {
    /** Nothing louder or softer than it is, and the usual dip. */
    public static final Levels EVEN = new Levels(0, 0, 0, 10);

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
        return new Levels(musicDb + db, voiceDb + db, clickDb + db, dipDb);
    }
}
