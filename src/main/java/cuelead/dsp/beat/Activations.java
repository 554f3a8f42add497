package cuelead.dsp.beat;

/**
 * How likely each frame is to hold a beat, and the first beat of a bar; {@link BandSpectrum#FRAMES_PER_SECOND} frames a
 * second. The arrays are the caller's to read, not to change.
 */
public final class Activations {
    private final float[] beat;
    private final float[] downbeat;

    /**
     * @param beat     by frame, 0 to 1
     * @param downbeat by frame, 0 to 1; as many frames
     */
    public Activations(float[] beat, float[] downbeat) {
        if (beat.length != downbeat.length) {
            throw new IllegalArgumentException("rows of " + beat.length + " and " + downbeat.length + " frames");
        }
        this.beat = beat;
        this.downbeat = downbeat;
    }

    public float[] beat() {
        return beat;
    }

    public float[] downbeat() {
        return downbeat;
    }

    public int frames() {
        return beat.length;
    }
}
