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
