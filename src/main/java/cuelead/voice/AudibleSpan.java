package cuelead.voice;

import java.util.Optional;

/**
 * Where a clip can be heard: from the first to behind the last frame whose 2 ms RMS exceeds the loudest 20 ms RMS less
 * 40 dB. The 2 ms window is centred and sees a sound coming, so within the first and last such window the edge is
 * the outermost sample that itself reaches 0.7 of that level.
 *
 * @param startFrame first audible frame
 * @param endFrame   frame behind the last audible one
 */
record AudibleSpan(int startFrame, int endFrame) {
    private static final double EDGE_WINDOW_SECONDS = 0.002;
    private static final double LOUD_WINDOW_SECONDS = 0.020;
    private static final double BELOW_LOUDEST = 0.01;
    private static final double NEVER_CUT_ABOVE = 0.2;
    private static final double EDGE_SAMPLE = 0.7;
    private static final double ABOVE_NOISE = 2;

    /** The audible span of a clean sound; empty when it is digital silence. */
    static Optional<AudibleSpan> of(MonoSound sound) {
        return of(sound, 0);
    }

    /**
     * The audible span above a room's noise: the threshold is raised to twice the noise, but never to less than 14 dB
     * below the loudest.
     *
     * @param noiseRms RMS of the sound between words, full scale = 1
     */
    static Optional<AudibleSpan> of(MonoSound sound, double noiseRms) {
        float[] samples = sound.samples();
        double[] energy = runningEnergy(samples);
        int window = Math.max(2, (int) (EDGE_WINDOW_SECONDS * sound.rate().hz()));
        double loudest =
                loudestRms(energy, (int) (LOUD_WINDOW_SECONDS * sound.rate().hz()));
        double threshold =
                Math.max(loudest * BELOW_LOUDEST, Math.min(noiseRms * ABOVE_NOISE, loudest * NEVER_CUT_ABOVE));
        int first = 0;
        while (first < samples.length && !(rms(energy, first, window) > threshold)) {
            first++;
        }
        if (first == samples.length) {
            return Optional.empty();
        }
        int last = samples.length - 1;
        while (!(rms(energy, last, window) > threshold)) {
            last--;
        }
        double edge = threshold * EDGE_SAMPLE;
        return Optional.of(new AudibleSpan(
                leadingEdge(samples, first, window, edge), trailingEdge(samples, last, window, edge) + 1));
    }

    /** RMS of the loudest window that is centred on a frame; windows at the ends are shorter. */
    static double loudestRms(MonoSound sound) {
        return loudestRms(runningEnergy(sound.samples()), (int)
                (LOUD_WINDOW_SECONDS * sound.rate().hz()));
    }

    private static double loudestRms(double[] energy, int window) {
        double loudest = 0;
        for (int i = 0; i < energy.length - 1; i++) {
            loudest = Math.max(loudest, rms(energy, i, window));
        }
        return loudest;
    }

    private static int leadingEdge(float[] samples, int first, int window, double edge) {
        for (int i = first; i < Math.min(samples.length, first + 2 * window); i++) {
            if (Math.abs(samples[i]) > edge) {
                return i;
            }
        }
        return first + window / 2;
    }

    private static int trailingEdge(float[] samples, int last, int window, double edge) {
        for (int i = last; i >= Math.max(0, last - 2 * window); i--) {
            if (Math.abs(samples[i]) > edge) {
                return i;
            }
        }
        return last - window / 2;
    }

    /** energy[i] = sum of the squares of the samples before i. */
    private static double[] runningEnergy(float[] samples) {
        double[] energy = new double[samples.length + 1];
        for (int i = 0; i < samples.length; i++) {
            energy[i + 1] = energy[i] + (double) samples[i] * samples[i];
        }
        return energy;
    }

    private static double rms(double[] energy, int centre, int window) {
        int from = Math.max(0, centre - window / 2);
        int to = Math.min(energy.length - 1, centre - window / 2 + window);
        return Math.sqrt(Math.max(0, (energy[to] - energy[from]) / (to - from)));
    }
}
