package cuelead.dsp.beat;

/**
 * What is struck in each beat: how strongly sound begins at its four quarters, in five ranges from bass drum to cymbals.
 * Bars are compared by it as patterns (Paulus and Klapuri 2002, "Measuring the similarity of rhythmic patterns").
 */
final class BeatStrokes {
    private static final int QUARTERS = 4;
    /** First bands of the ranges: bass drum; low and high drum skins; between; from about 5 kHz on, cymbals. */
    private static final int[] RANGES = {0, 6, 20, 44, Onsets.FIRST_CYMBAL_BAND};
    /** One past their last bands. */
    private static final int[] RANGE_ENDS = {Onsets.LOW_BANDS, 20, 44, Onsets.FIRST_CYMBAL_BAND, 74};

    private static final double REACH_SECONDS = 0.045;
    /** The last two beats of a bar hold most fills. */
    private static final int FILL_BEATS = 2;

    private static final double FILL_WEIGHT = 1.5;
    private static final double OTHER_WEIGHT = 0.7;
    private static final int FIRST_SKIN_RANGE = 1;
    private static final int LAST_SKIN_RANGE = 2;

    /** By beat, then quarter and range. */
    private final float[][] strokes;

    /**
     * @param loudness by band, then frame
     * @param seconds  times of the beats; the last beat is as long as the one before it
     */
    BeatStrokes(float[][] loudness, double[] seconds) {
        int ranges = RANGE_ENDS.length;
        strokes = new float[seconds.length][QUARTERS * ranges];
        for (int range = 0; range < ranges; range++) {
            Onsets onsets = Onsets.of(loudness, RANGES[range], Math.min(loudness.length, RANGE_ENDS[range]));
            for (int i = 0; i < seconds.length; i++) {
                double end = HeardBeats.endSeconds(seconds, i);
                for (int quarter = 0; quarter < QUARTERS; quarter++) {
                    double at = seconds[i] + (end - seconds[i]) * quarter / QUARTERS;
                    double reach = quarter == 0 ? REACH_SECONDS : REACH_SECONDS / 2;
                    strokes[i][quarter * ranges + range] = (float) onsets.near(at, reach);
                }
            }
        }
    }

    /** By beat, then quarter and range; to read, not to change. */
    float[][] patterns() {
        return strokes;
    }

    private float[] at(int beat) {
        return strokes[Math.max(0, Math.min(strokes.length - 1, beat))];
    }

    /** Strength of bass and bass drum on a beat. */
    double bass(int beat) {
        return at(beat)[0];
    }

    /** Strength on a beat, of all ranges together. */
    double hit(int beat) {
        double sum = 0;
        for (int range = 0; range < RANGE_ENDS.length; range++) {
            sum += at(beat)[range];
        }
        return sum;
    }

    /** Drum strokes between the last two beats before, over those a bar before them. */
    double fill(int beat, int barBeats) {
        double sum = 0;
        for (int back = 1; back <= FILL_BEATS; back++) {
            sum += between(beat - back) - between(beat - back - barBeats);
        }
        return sum;
    }

    private double between(int beat) {
        double sum = 0;
        for (int quarter = 1; quarter < QUARTERS; quarter++) {
            for (int range = FIRST_SKIN_RANGE; range <= LAST_SKIN_RANGE; range++) {
                sum += at(beat)[quarter * RANGE_ENDS.length + range];
            }
        }
        return sum;
    }

    /** How little the bar before a beat is like any of the bars around it, its last beats above all: a fill, or a stop. */
    double oddness(int beat, int barBeats) {
        double sum = 0;
        for (int back = 1; back <= barBeats; back++) {
            double least = Double.POSITIVE_INFINITY;
            for (int bars : new int[] {-2, -1, 1, 2}) {
                least = Math.min(least, distance(at(beat - back), at(beat - back + bars * barBeats)));
            }
            sum += least * (back <= FILL_BEATS ? FILL_WEIGHT : OTHER_WEIGHT);
        }
        return sum;
    }

    /** How differently the drums play in the bars before and from a beat on, so many on each side. */
    double change(int beat, int bars, int barBeats) {
        return distance(meanBar(beat - bars * barBeats, bars, barBeats), meanBar(beat, bars, barBeats));
    }

    private float[] meanBar(int first, int bars, int barBeats) {
        int width = strokes.length == 0 ? 0 : strokes[0].length;
        float[] mean = new float[barBeats * width];
        for (int bar = 0; bar < bars; bar++) {
            for (int beat = 0; beat < barBeats; beat++) {
                MultiplyAdd.run(1f / bars, at(first + bar * barBeats + beat), 0, mean, beat * width, width);
            }
        }
        return mean;
    }

    private static double distance(float[] a, float[] b) {
        double squares = 0;
        for (int i = 0; i < a.length; i++) {
            squares += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(squares / a.length);
    }
}
