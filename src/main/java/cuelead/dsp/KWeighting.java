package cuelead.dsp;

import cuelead.time.SampleRate;

/**
 * The K-weighting filter of Recommendation ITU-R BS.1770-4, annex 1: a high shelf for the head and a high-pass,
 * one channel, with state. The standard gives coefficients for 48 kHz only (tables 1 and 2); for other rates
 * they are made again by the bilinear transform from the analogue values that yield those tables.
 *
 * <p>Not thread-safe. Realtime-safe: {@link #filter} allocates nothing.
 */
public final class KWeighting {
    private static final double SHELF_HZ = 1681.974450955533;
    private static final double SHELF_DB = 3.999843853973347;
    private static final double SHELF_Q = 0.7071752369554196;
    private static final double SHELF_BAND_POWER = 0.4996667741545416;
    private static final double HIGH_PASS_HZ = 38.13547087602444;
    private static final double HIGH_PASS_Q = 0.5003270373238773;
    /** BS.1770-4 annex 1: loudness = this + 10 log10(weighted power). */
    private static final double OFFSET_LU = -0.691;
    /** Below every signal that matters; keeps the logarithm finite. */
    private static final double SILENT_POWER = 1e-14;

    private final double shelfB0;
    private final double shelfB1;
    private final double shelfB2;
    private final double shelfA1;
    private final double shelfA2;
    private final double highA1;
    private final double highA2;

    private double shelf1;
    private double shelf2;
    private double high1;
    private double high2;

    public KWeighting(SampleRate rate) {
        double k = Math.tan(Math.PI * SHELF_HZ / rate.hz());
        double high = Math.pow(10, SHELF_DB / 20);
        double band = Math.pow(high, SHELF_BAND_POWER);
        double a0 = 1 + k / SHELF_Q + k * k;
        shelfB0 = (high + band * k / SHELF_Q + k * k) / a0;
        shelfB1 = 2 * (k * k - high) / a0;
        shelfB2 = (high - band * k / SHELF_Q + k * k) / a0;
        shelfA1 = 2 * (k * k - 1) / a0;
        shelfA2 = (1 - k / SHELF_Q + k * k) / a0;

        k = Math.tan(Math.PI * HIGH_PASS_HZ / rate.hz());
        a0 = 1 + k / HIGH_PASS_Q + k * k;
        highA1 = 2 * (k * k - 1) / a0;
        highA2 = (1 - k / HIGH_PASS_Q + k * k) / a0;
    }

    /** Filters the next sample (transposed direct form II). */
    public double filter(double sample) {
        double shelved = shelfB0 * sample + shelf1;
        shelf1 = shelfB1 * sample - shelfA1 * shelved + shelf2;
        shelf2 = shelfB2 * sample - shelfA2 * shelved;
        double passed = shelved + high1;
        high1 = -2 * shelved - highA1 * passed + high2;
        high2 = shelved - highA2 * passed;
        return passed;
    }

    /**
     * Ungated loudness of a short mono sound heard on both speakers counted as one channel, in LUFS.
     *
     * @param samples mono, full scale = 1
     */
    public static double loudnessLufs(float[] samples, SampleRate rate) {
        KWeighting weighting = new KWeighting(rate);
        double sum = 0;
        for (float sample : samples) {
            double weighted = weighting.filter(sample);
            sum += weighted * weighted;
        }
        return lufsOfPower(sum / Math.max(1, samples.length));
    }

    /** Loudness of a weighted mean-square power summed over channels, in LUFS. */
    public static double lufsOfPower(double weightedPower) {
        return OFFSET_LU + 10 * Math.log10(weightedPower + SILENT_POWER);
    }

    /** The weighted power that has this loudness. */
    public static double powerOfLufs(double lufs) {
        return Math.pow(10, (lufs - OFFSET_LU) / 10);
    }
}
