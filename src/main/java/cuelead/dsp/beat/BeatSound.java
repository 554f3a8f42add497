package cuelead.dsp.beat;

import java.util.Arrays;

/**
 * What sounds during each beat: the mean loudness of every band, and how it is shared among the twelve notes (chroma;
 * Fujishima 1999, "Realtime chord recognition of musical sound"). Averaging over beats makes sections comparable whatever
 * the tempo (Foote 2000, "Automatic audio segmentation using a measure of audio novelty").
 */
final class BeatSound {
    /** From here on bands are a semitone apart; lower ones are too wide to tell notes. */
    private static final int FIRST_SEMITONE_BAND = 20;

    private static final int LAST_NOTE_BAND = 56;
    private static final int NOTES = 12;

    private final float[][] loudness;
    private final float[][] chroma;

    /**
     * @param bands   loudness by band, then frame
     * @param seconds times of the beats; the last beat is as long as the one before it
     */
    BeatSound(float[][] bands, double[] seconds) {
        int frames = bands[0].length;
        loudness = new float[seconds.length][bands.length];
        chroma = new float[seconds.length][NOTES];
        for (int i = 0; i < seconds.length; i++) {
            double end = HeardBeats.endSeconds(seconds, i);
            int first = frame(seconds[i], frames);
            int last = Math.max(first + 1, frame(end, frames));
            for (int band = 0; band < bands.length; band++) {
                loudness[i][band] = mean(bands[band], first, last);
            }
            fold(loudness[i], chroma[i]);
        }
    }

    private static int frame(double seconds, int frames) {
        return (int) Math.max(0, Math.min(frames - 1, Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND)));
    }

    private static float mean(float[] values, int from, int to) {
        float sum = 0;
        for (int t = from; t < Math.min(to, values.length); t++) {
            sum += values[t];
        }
        return sum / (to - from);
    }

    private static void fold(float[] bands, float[] notes) {
        for (int band = FIRST_SEMITONE_BAND; band < LAST_NOTE_BAND; band++) {
            // what stands out among its neighbours is a note; what does not is noise
            float around = (bands[band - 2] + bands[band - 1] + bands[band + 1] + bands[band + 2]) / 4;
            notes[band % NOTES] += Math.max(0, bands[band] - around);
        }
    }

    int beats() {
        return loudness.length;
    }

    /** Mean loudness of some bands in one beat; the song's nearest beat outside of it. */
    double level(int beat, int fromBand, int toBand) {
        float[] bands = loudness[Math.max(0, Math.min(loudness.length - 1, beat))];
        double sum = 0;
        for (int band = fromBand; band < toBand; band++) {
            sum += bands[band];
        }
        return sum / (toBand - fromBand);
    }

    /** How differently the beats before and from {@code beat} on sound, so many on each side; 0 = the same. */
    double change(int beat, int beatsEachSide) {
        return distance(meanOf(loudness, beat - beatsEachSide, beat), meanOf(loudness, beat, beat + beatsEachSide));
    }

    /** The same for the notes alone, whatever their loudness; 0 to 2. */
    double chordChange(int beat, int beatsEachSide) {
        float[] before = meanOf(chroma, beat - beatsEachSide, beat);
        float[] after = meanOf(chroma, beat, beat + beatsEachSide);
        return 1 - cosine(before, after);
    }

    /** How much louder some bands are in the beats from {@code beat} on than in those before, so many on each side. */
    double step(int beat, int beatsEachSide, int fromBand, int toBand) {
        float[] before = meanOf(loudness, beat - beatsEachSide, beat);
        float[] after = meanOf(loudness, beat, beat + beatsEachSide);
        double sum = 0;
        for (int band = fromBand; band < toBand; band++) {
            sum += after[band] - before[band];
        }
        return sum / (toBand - fromBand);
    }

    /** Mean loudness by beat, then band; to read, not to change. */
    float[][] loudness() {
        return loudness;
    }

    /** Strength by beat, then note; to read, not to change. */
    float[][] chroma() {
        return chroma;
    }

    private static float[] meanOf(float[][] rows, int from, int to) {
        int first = Math.max(0, Math.min(rows.length - 1, from));
        int end = Math.max(first + 1, Math.min(rows.length, to));
        float[] mean = new float[rows[0].length];
        for (float[] row : Arrays.copyOfRange(rows, first, end)) {
            MultiplyAdd.run(1f / (end - first), row, 0, mean, 0, mean.length);
        }
        return mean;
    }

    /** Root of the mean square of the differences. */
    static double distance(float[] a, float[] b) {
        double squares = 0;
        for (int i = 0; i < a.length; i++) {
            squares += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(squares / a.length);
    }

    static double cosine(float[] a, float[] b) {
        double dot = 1e-9;
        double squaresA = 1e-9;
        double squaresB = 1e-9;
        for (int i = 0; i < a.length; i++) {
            dot += a[i] * b[i];
            squaresA += a[i] * a[i];
            squaresB += b[i] * b[i];
        }
        return dot / Math.sqrt(squaresA * squaresB);
    }
}
