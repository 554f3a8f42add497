package cuelead.voice;

import cuelead.time.SampleRate;

/** A second-order Butterworth filter by the bilinear transform (Oppenheim and Schafer, section 7.1). */
final class Biquad {
    private static final double DAMPING = Math.sqrt(2);

    private final double b0;
    private final double b1;
    private final double a1;
    private final double a2;

    private Biquad(double b0, double b1, double a1, double a2) {
        this.b0 = b0;
        this.b1 = b1;
        this.a1 = a1;
        this.a2 = a2;
    }

    /** Lets through what is below a frequency, -3 dB there. */
    static Biquad lowPass(double hz, SampleRate rate) {
        double k = Math.tan(Math.PI * hz / rate.hz());
        double a0 = 1 + DAMPING * k + k * k;
        return new Biquad(k * k / a0, 2 * k * k / a0, 2 * (k * k - 1) / a0, (1 - DAMPING * k + k * k) / a0);
    }

    /** Lets through what is above a frequency, -3 dB there. */
    static Biquad highPass(double hz, SampleRate rate) {
        double k = Math.tan(Math.PI * hz / rate.hz());
        double a0 = 1 + DAMPING * k + k * k;
        return new Biquad(1 / a0, -2 / a0, 2 * (k * k - 1) / a0, (1 - DAMPING * k + k * k) / a0);
    }

    /** Filters samples in place, from rest (transposed direct form II; b2 = b0). */
    void run(double[] samples) {
        double state1 = 0;
        double state2 = 0;
        for (int i = 0; i < samples.length; i++) {
            double in = samples[i];
            double out = b0 * in + state1;
            state1 = b1 * in - a1 * out + state2;
            state2 = b0 * in - a2 * out;
            samples[i] = out;
        }
    }

    /** Filters forwards and backwards: twice the effect, and nothing is delayed. */
    void runBothWays(double[] samples) {
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
