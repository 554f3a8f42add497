package cuelead.voice;

import cuelead.time.SampleRate;

/** Samples of one channel that know their rate. Full scale = 1; the array is handed over and not changed again. */
public final class MonoSound {
    private final float[] samples;
    private final SampleRate rate;

    public MonoSound(float[] samples, SampleRate rate) {
        this.samples = samples;
        this.rate = rate;
    }

    static MonoSound of(double[] samples, SampleRate rate) {
        float[] rounded = new float[samples.length];
        for (int i = 0; i < rounded.length; i++) {
            rounded[i] = (float) samples[i];
        }
        return new MonoSound(rounded, rate);
    }

    /** A copy that filters may work on. */
    double[] doubles() {
        double[] copy = new double[samples.length];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = samples[i];
        }
        return copy;
    }

    /** Not to be changed. */
    public float[] samples() {
        return samples;
    }

    public SampleRate rate() {
        return rate;
    }

    public int frames() {
        return samples.length;
    }

    public double lengthSeconds() {
        return rate.secondsAt(samples.length);
    }
}
