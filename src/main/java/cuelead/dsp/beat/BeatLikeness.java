package cuelead.dsp.beat;

/**
 * How alike the beats of a song are to those near by, in notes, sound and strokes: the part of a self-similarity matrix
 * about its diagonal (Foote 2000, "Automatic audio segmentation using a measure of audio novelty"; beat by beat as McFee
 * and Ellis 2014, "Analyzing song structure with spectral clustering", section 2).
 */
final class BeatLikeness {
    /** Novelty looks so many beats to either side. */
    static final int MOST_BEATS = 32;

    private static final double NOTES_WEIGHT = 2;

    /** By beat, then how many beats later the other is: cosines. */
    private final float[][] cosines;

    BeatLikeness(BeatSound sound, BeatStrokes strokes) {
        int beats = sound.beats();
        float[][] notes = unit(sound.chroma());
        float[][] features = joined(
                beats, centred(notes, NOTES_WEIGHT), centred(sound.loudness(), 1), centred(strokes.patterns(), 1));
        float[][] rows = unit(features);
        cosines = new float[beats][2 * MOST_BEATS];
        for (int i = 0; i < beats; i++) {
            for (int lag = 0; lag < 2 * MOST_BEATS && i + lag < beats; lag++) {
                cosines[i][lag] = dot(rows[i], rows[i + lag]);
            }
        }
    }

    private static float[][] unit(float[][] rows) {
        float[][] unit = new float[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            float scale = (float) (1 / Math.sqrt(dot(rows[i], rows[i]) + 1e-6));
            unit[i] = new float[rows[i].length];
            MultiplyAdd.run(scale, rows[i], 0, unit[i], 0, rows[i].length);
        }
        return unit;
    }

    private static float dot(float[] a, float[] b) {
        float sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Each column less its mean; all so scaled that a row's squares sum to the weight's square on the average. */
    private static float[][] centred(float[][] rows, double weight) {
        int width = rows.length == 0 ? 0 : rows[0].length;
        float[] mean = new float[width];
        for (float[] row : rows) {
            MultiplyAdd.run(1f / rows.length, row, 0, mean, 0, width);
        }
        double squares = 1e-9;
        float[][] centred = new float[rows.length][width];
        for (int i = 0; i < rows.length; i++) {
            for (int k = 0; k < width; k++) {
                centred[i][k] = rows[i][k] - mean[k];
                squares += centred[i][k] * centred[i][k] / rows.length;
            }
        }
        float scale = (float) (weight / Math.sqrt(squares));
        for (float[] row : centred) {
            for (int k = 0; k < width; k++) {
                row[k] *= scale;
            }
        }
        return centred;
    }

    private static float[][] joined(int beats, float[][]... parts) {
        float[][] joined = new float[beats][];
        for (int i = 0; i < beats; i++) {
            int width = 0;
            for (float[][] part : parts) {
                width += part[i].length;
            }
            joined[i] = new float[width];
            int at = 0;
            for (float[][] part : parts) {
                System.arraycopy(part[i], 0, joined[i], at, part[i].length);
                at += part[i].length;
            }
        }
        return joined;
    }

    private float at(int one, int other) {
        return cosines[Math.min(one, other)][Math.abs(other - one)];
    }

    /** How alike the bars are that begin with two beats; outside of the song as its first or last beat. */
    private double bars(int one, int other, int barBeats) {
        int a = Math.max(0, Math.min(cosines.length - 1, one));
        int b = Math.max(0, Math.min(cosines.length - 1, other));
        double sum = 0;
        int count = 0;
        for (int i = 0; i < barBeats && Math.max(a, b) + i < cosines.length; i++) {
            sum += at(a + i, b + i);
            count++;
        }
        return sum / count;
    }

    /**
     * How much more the bar of a beat is like those two bars away than its neighbours are: question and answer go in pairs,
     * and the question comes back more alike.
     */
    double pairing(int beat, int barBeats) {
        return bars(beat, beat + 2 * barBeats, barBeats)
                + bars(beat, beat - 2 * barBeats, barBeats)
                - bars(beat + barBeats, beat - barBeats, barBeats)
                - bars(beat + barBeats, beat + 3 * barBeats, barBeats) / 2
                - bars(beat - barBeats, beat - 3 * barBeats, barBeats) / 2;
    }

    /** How alike the beats on each side are among themselves, over how alike they are across (Foote's checkerboard). */
    double novelty(int beat, int beatsEachSide) {
        return block(beat - beatsEachSide, beat - beatsEachSide, beatsEachSide)
                + block(beat, beat, beatsEachSide)
                - 2 * block(beat - beatsEachSide, beat, beatsEachSide);
    }

    private double block(int one, int other, int width) {
        double sum = 0;
        int count = 0;
        for (int a = Math.max(0, one); a < Math.min(cosines.length, one + width); a++) {
            for (int b = Math.max(0, other); b < Math.min(cosines.length, other + width); b++) {
                sum += at(a, b);
                count++;
            }
        }
        return sum / Math.max(1, count);
    }
}
