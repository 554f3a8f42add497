package cuelead.dsp.beat;

import java.util.function.ToDoubleBiFunction;

/**
 * How soon what a row of beats holds comes back: how unlike beats one, two, four and eight apart are, on the mean. What is
 * played comes back after a bar, so at the felt beat it does so after four beats, or three, or two; heard twice as fast, later
 * (compare the beat spectrum of Foote and Uchihashi 2001, "The beat spectrum: a new approach to rhythm analysis").
 */
final class Recurrence {
    /** Beats apart. */
    private static final int[] LAGS = {1, 2, 4, 8};
    /** What three kinds of unlikeness must not be divided by. */
    private static final double LEAST = 1e-9;

    private final double[] strokes;
    private final double[] notes;
    private final double[] sound;

    /**
     * Compares the beats.
     *
     * @param loudness of the song, by band, then frame
     * @param seconds  times of the beats
     */
    Recurrence(float[][] loudness, double[] seconds) {
        BeatSound heard = new BeatSound(loudness, seconds);
        strokes = unlikeness(new BeatStrokes(loudness, seconds).patterns(), BeatSound::distance);
        notes = unlikeness(heard.chroma(), (a, b) -> 1 - BeatSound.cosine(a, b));
        sound = unlikeness(heard.loudness(), BeatSound::distance);
    }

    /** How many distances there are of each kind. */
    static int lags() {
        return LAGS.length;
    }

    /** By lag, in what is struck; 1 = as unlike as on the mean of the lags. */
    double[] strokes() {
        return strokes;
    }

    /** The same in the notes that sound. */
    double[] notes() {
        return notes;
    }

    /** The same in the loudness of the bands. */
    double[] sound() {
        return sound;
    }

    private static double[] unlikeness(float[][] rows, ToDoubleBiFunction<float[], float[]> distance) {
        double[] unlike = new double[LAGS.length];
        double mean = 0;
        for (int k = 0; k < LAGS.length; k++) {
            double sum = 0;
            for (int i = 0; i + LAGS[k] < rows.length; i++) {
                sum += distance.applyAsDouble(rows[i], rows[i + LAGS[k]]);
            }
            unlike[k] = sum / Math.max(1, rows.length - LAGS[k]) + LEAST;
            mean += unlike[k] / LAGS.length;
        }
        for (int k = 0; k < LAGS.length; k++) {
            unlike[k] /= mean;
        }
        return unlike;
    }
}
