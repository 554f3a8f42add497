package cuelead.voice;

import cuelead.dsp.Biquad;

/**
 * How periodic a sound is where a voice hums, 120 to 900 Hz: the highest normalized cross-correlation of 25 ms with what
 * lies a period of 70 to 400 Hz later (Talkin 1995, "A robust algorithm for pitch tracking", in Speech Coding and
 * Synthesis). Near 1 in vowels; breaths, hisses and smacks of the lips stay below 0.6.
 */
final class Periodicity {
    static final double VOICED = 0.6;

    private static final double LOW_HZ = 120;
    private static final double HIGH_HZ = 900;
    private static final double LOWEST_PITCH_HZ = 70;
    private static final double HIGHEST_PITCH_HZ = 400;
    private static final double WINDOW_SECONDS = 0.025;
    /** Enough for what lies below 900 Hz. */
    private static final int LOWEST_RATE_HZ = 4_000;
    /** It changes slowly: a value for every 10 ms, repeated for each step. */
    private static final int STEPS_A_VALUE = 5;

    private static final double NOTHING = 1e-12;

    private final double[] samples;
    private final double hz;

    private Periodicity(MonoSound sound) {
        double[] band = sound.doubles();
        Biquad.highPass(LOW_HZ, sound.rate()).runBothWays(band);
        Biquad.lowPass(HIGH_HZ, sound.rate()).runBothWays(band);
        int every = Math.max(1, sound.rate().hz() / LOWEST_RATE_HZ);
        hz = (double) sound.rate().hz() / every;
        samples = new double[band.length / every];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = band[i * every];
        }
    }

    /** One value a step of {@link BarkPowers}, 0 to 1; near the edges of the sound that of the first or last window. */
    static double[] of(MonoSound sound, int steps) {
        Periodicity periodicity = new Periodicity(sound);
        double[] values = new double[steps];
        for (int step = 0; step < steps; step++) {
            values[step] =
                    step % STEPS_A_VALUE == 0 ? periodicity.at(step * BarkPowers.STEP_SECONDS) : values[step - 1];
        }
        return values;
    }

    private double at(double seconds) {
        int window = (int) (WINDOW_SECONDS * hz);
        double highest = 0;
        for (int lag = (int) (hz / HIGHEST_PITCH_HZ); lag <= (int) (hz / LOWEST_PITCH_HZ); lag++) {
            int latest = samples.length - window - lag;
            if (latest >= 0) {
                int first = (int) (seconds * hz) - (window + lag) / 2;
                highest = Math.max(highest, correlation(Math.max(0, Math.min(latest, first)), window, lag));
            }
        }
        return highest;
    }

    private double correlation(int first, int window, int lag) {
        double product = 0;
        double before = NOTHING;
        double after = NOTHING;
        for (int i = first; i < first + window; i++) {
            product += samples[i] * samples[i + lag];
            before += samples[i] * samples[i];
            after += samples[i + lag] * samples[i + lag];
        }
        return product / Math.sqrt(before * after);
    }
}
