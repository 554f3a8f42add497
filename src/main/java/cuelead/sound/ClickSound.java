package cuelead.sound;

import cuelead.time.SampleRate;

/**
 * The two built-in clicks: a small struck bar of wood, the accented one a fourth higher and a little louder. The
 * partials are those of a bar free at both ends (Fletcher and Rossing, "The physics of musical instruments",
 * section 2.15), each a damped sine, so that the attack begins with the very first sample.
 */
public enum ClickSound {
    ACCENTED(1_480, 1),
    PLAIN(1_110, 0.7);

    private static final double LENGTH_SECONDS = 0.060;
    private static final double DECAY_SECONDS = 0.009;
    private static final double FADE_SECONDS = 0.010;
    private static final double[] PARTIAL_RATIOS = {1, 2.756, 5.404};
    private static final double[] PARTIAL_HEIGHTS = {1, 0.35, 0.12};
    private static final double PEAK = 0.5;

    private final double fundamentalHz;
    private final double height;

    ClickSound(double fundamentalHz, double height) {
        this.fundamentalHz = fundamentalHz;
        this.height = height;
    }

    /** Its samples, mono; equal rates give equal samples. The accented click peaks at half of full scale. */
    public float[] samples(SampleRate rate) {
        double[] ring = new double[rate.framesIn(LENGTH_SECONDS)];
        double highest = 0;
        for (int i = 0; i < ring.length; i++) {
            double seconds = (i + 1.0) / rate.hz();
            double left = (ring.length - i) / (FADE_SECONDS * rate.hz());
            ring[i] = ringAt(seconds, rate) * Math.min(1, left);
            highest = Math.max(highest, Math.abs(ring[i]));
        }
        float[] samples = new float[ring.length];
        for (int i = 0; i < ring.length; i++) {
            samples[i] = (float) (ring[i] / highest * PEAK * height);
        }
        return samples;
    }

    private double ringAt(double seconds, SampleRate rate) {
        double sum = 0;
        for (int partial = 0; partial < PARTIAL_RATIOS.length; partial++) {
            double hz = fundamentalHz * PARTIAL_RATIOS[partial];
            if (hz < 0.45 * rate.hz()) {
                double damping = Math.exp(-seconds * PARTIAL_RATIOS[partial] / DECAY_SECONDS);
                sum += PARTIAL_HEIGHTS[partial] * damping * Math.sin(2 * Math.PI * hz * seconds);
            }
        }
        return sum;
    }
}
