package cuelead.dsp.beat;

/**
 * How likely each frame is to hold a beat, the first beat of a bar, and the first of a phrase; {@link BandSpectrum#FRAMES_PER_SECOND} frames a
 * second. The arrays are the caller's to read, not to change.
 */
public final class Activations {
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
