package cuelead.dsp.beat;

/**
 * How likely each frame is to hold a beat, the first beat of a bar, and the first of a phrase; {@link BandSpectrum#FRAMES_PER_SECOND} frames a
 * second. The arrays are the caller's to read, not to change.
 */
public final class Activations {
    private static final int REACH_FRAMES = 2;

    private final float[] beat;
    private final float[] downbeat;
    private final float[] phrase;

    /**
     * @param beat     by frame, 0 to 1
     * @param downbeat by frame, 0 to 1; as many frames
     * @param phrase   by frame, 0 to 1; as many frames
     */
    public Activations(float[] beat, float[] downbeat, float[] phrase) {
        if (beat.length != downbeat.length || beat.length != phrase.length) {
            throw new IllegalArgumentException(
                    "rows of " + beat.length + ", " + downbeat.length + " and " + phrase.length + " frames");
        }
        this.beat = beat;
        this.downbeat = downbeat;
        this.phrase = phrase;
    }

    /** The highest of a row about a time: the network's peak may lie {@value #REACH_FRAMES} frames beside the beat. */
    static double highestNear(float[] row, double seconds) {
        int centre = (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
        int last = Math.min(row.length - 1, centre + REACH_FRAMES);
        double highest = 0;
        for (int t = Math.max(0, centre - REACH_FRAMES); t <= last; t++) {
            highest = Math.max(highest, row[t]);
        }
        return highest;
    }

    public float[] beat() {
        return beat;
    }

    public float[] downbeat() {
        return downbeat;
    }

    public float[] phrase() {
        return phrase;
    }

    public int frames() {
        return beat.length;
    }
}
