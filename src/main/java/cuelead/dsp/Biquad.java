package cuelead.dsp;

import cuelead.time.SampleRate;

/**
 * A second-order filter by the bilinear transform: Butterworth low-pass and high-pass (Oppenheim and Schafer, section
 * 7.1), and a bell that raises or lowers the surroundings of a frequency (Bristow-Johnson, "Cookbook formulae for audio
 * EQ biquad filter coefficients", peakingEQ). Immutable.
 */
public final class Biquad {
    private static final double DAMPING = Math.sqrt(2);

    private final double b0;
    private final double b1;
    private final double b2;
    private final double a1;
    private final double a2;

    private Biquad(double b0, double b1, double b2, double a1, double a2) {
        this.b0 = b0;
        this.b1 = b1;
        this.b2 = b2;
        this.a1 = a1;
        this.a2 = a2;
    }

    /** Lets through what is below a frequency, -3 dB there. */
    public static Biquad lowPass(double hz, SampleRate rate) {
        double k = tangent(hz, rate);
        double a0 = 1 + DAMPING * k + k * k;
        double b0 = k * k / a0;
        return new Biquad(b0, 2 * b0, b0, 2 * (k * k - 1) / a0, (1 - DAMPING * k + k * k) / a0);
    }

    /** Lets through what is above a frequency, -3 dB there. */
    public static Biquad highPass(double hz, SampleRate rate) {
        double k = tangent(hz, rate);
        double a0 = 1 + DAMPING * k + k * k;
        double b0 = 1 / a0;
        return new Biquad(b0, -2 * b0, b0, 2 * (k * k - 1) / a0, (1 - DAMPING * k + k * k) / a0);
    }

    /**
     * Changes the level around a frequency and leaves what is far from it.
     *
     * @param db what the frequency itself gains
     * @param q  how narrow: frequency by width between the points of half the gain in dB
     */
    public static Biquad bell(double hz, double db, double q, SampleRate rate) {
        double height = Math.pow(10, db / 40);
        double w = 2 * Math.PI * hz / rate.hz();
        double alpha = Math.sin(w) / (2 * q);
        double a0 = 1 + alpha / height;
        double middle = -2 * Math.cos(w) / a0;
        return new Biquad(
                (1 + alpha * height) / a0, middle, (1 - alpha * height) / a0, middle, (1 - alpha / height) / a0);
    }

    private static double tangent(double hz, SampleRate rate) {
        return Math.tan(Math.PI * hz / rate.hz());
    }

    /** Filters samples in place, from rest. */
    public void run(double[] samples) {
        Stream stream = stream();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = stream.filter(samples[i]);
        }
    }

    /** Filters a stream, from rest. Not thread-safe; realtime-safe. */
    public final class Stream {
        private double state1;
        private double state2;

        /** The next sample (transposed direct form II). */
        public double filter(double in) {
            double out = b0 * in + state1;
            state1 = b1 * in - a1 * out + state2;
            state2 = b2 * in - a2 * out;
            return out;
        }
    }

    /** A new stream through this filter. */
    public Stream stream() {
        return new Stream();
    }

    /** Filters forwards and backwards: twice the effect, and nothing is delayed. */
    public void runBothWays(double[] samples) {
        for (int pass = 0; pass < 2; pass++) {
            run(samples);
            for (int i = 0, j = samples.length - 1; i < j; i++, j--) {
                double swapped = samples[i];
                samples[i] = samples[j];
                samples[j] = swapped;
            }
        }
    }
}
