package cuelead.dsp;

import java.util.Arrays;

/**
 * How high one channel swings from each frame to the next: the larger of the sample itself and of three points
 * interpolated between it and the following one, as ITU-R BS.1770-4, annex 2 asks (four-fold over-sampling). The
 * standard's example filter has 12 taps a phase; this one is a sinc with a Kaiser window and 24, which follows
 * high frequencies further.
 *
 * <p>Answers come {@link #DELAY_FRAMES} late, for the interpolator looks ahead. Not thread-safe. Realtime-safe.
 */
final class IntersamplePeaks {
    /** Most frames that one call may bring. */
    static final int CHUNK_FRAMES = 256;

    /** The answer to the frame put in now is about the frame put in so many before. */
    static final int DELAY_FRAMES = 12;

    private static final int TAPS = 2 * DELAY_FRAMES;
    private static final int OVERSAMPLING = 4;
    private static final double KAISER_BETA = 6;
    private static final float[][] PHASES = phases();
    /** No interpolated point exceeds the largest of its samples by more than this factor. */
    private static final float MOST_GAIN = mostGain();

    private final float[] line = new float[TAPS - 1 + CHUNK_FRAMES];
    private final float[] between = new float[CHUNK_FRAMES];

    /**
     * Raises {@code peaks[i]} to the peak of the i-th frame.
     *
     * @param interleaved  the next frames
     * @param firstFrame   the first of them in that array
     * @param frames       how many, at most {@link #CHUNK_FRAMES}
     * @param channels     channels in the array
     * @param channel      the one to look at
     * @param ignoredPeak  peaks that are surely not above this may be told as the sample's own height
     */
    void raise(
            float[] interleaved,
            int firstFrame,
            int frames,
            int channels,
            int channel,
            float ignoredPeak,
            float[] peaks) {
        float highest = 0;
        for (int i = 0; i < TAPS - 1; i++) {
            highest = Math.max(highest, Math.abs(line[i]));
        }
        for (int i = 0; i < frames; i++) {
            float sample = interleaved[(firstFrame + i) * channels + channel];
            line[TAPS - 1 + i] = sample;
            highest = Math.max(highest, Math.abs(sample));
        }
        for (int i = 0; i < frames; i++) {
            peaks[i] = Math.max(peaks[i], Math.abs(line[i + DELAY_FRAMES - 1]));
        }
        if (highest * MOST_GAIN > ignoredPeak) {
            interpolate(frames, peaks);
        }
        System.arraycopy(line, frames, line, 0, TAPS - 1);
    }

    private void interpolate(int frames, float[] peaks) {
        for (float[] phase : PHASES) {
            Arrays.fill(between, 0, frames, 0);
            for (int tap = 0; tap < TAPS; tap++) {
                float weight = phase[tap];
                for (int i = 0; i < frames; i++) {
                    between[i] += weight * line[i + tap];
                }
            }
            for (int i = 0; i < frames; i++) {
                peaks[i] = Math.max(peaks[i], Math.abs(between[i]));
            }
        }
    }

    /** Weights of the points a quarter, a half and three quarters of the way to the next frame. */
    private static float[][] phases() {
        float[][] phases = new float[OVERSAMPLING - 1][TAPS];
        for (int point = 1; point < OVERSAMPLING; point++) {
            double[] row = new double[TAPS];
            double sum = 0;
            for (int tap = 0; tap < TAPS; tap++) {
                double x = tap - (DELAY_FRAMES - 1) - (double) point / OVERSAMPLING;
                row[tap] = Math.sin(Math.PI * x) / (Math.PI * x) * Kaiser.window(x / DELAY_FRAMES, KAISER_BETA);
                sum += row[tap];
            }
            for (int tap = 0; tap < TAPS; tap++) {
                phases[point - 1][tap] = (float) (row[tap] / sum);
            }
        }
        return phases;
    }

    private static float mostGain() {
        float most = 0;
        for (float[] phase : PHASES) {
            float sum = 0;
            for (float weight : phase) {
                sum += Math.abs(weight);
            }
            most = Math.max(most, sum);
        }
        return most;
    }
}
