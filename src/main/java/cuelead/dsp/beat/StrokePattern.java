package cuelead.dsp.beat;

import java.util.List;

/**
 * What is struck in two beats, on the mean of a stretch: loud and soft beat of a groove. Two stretches with the same groove
 * are alike where both lie on the beat, and unlike where one lies between the beats (a song's own rhythmic pattern tells its
 * beat; Dixon, Gouyon and Widmer 2004, "Towards characterisation of music via rhythmic patterns").
 */
final class StrokePattern {
    private static final int BEATS = 2;

    private final float[][] means;
    private final int beats;

    private StrokePattern(float[][] means, int beats) {
        this.means = means;
        this.beats = beats;
    }

    /**
     * That of beats one after another.
     *
     * @param loudness by band, then frame
     * @param seconds  times of the beats, one at least
     */
    static StrokePattern of(float[][] loudness, double[] seconds) {
        float[][] strokes = new BeatStrokes(loudness, seconds).patterns();
        float[][] means = new float[BEATS][strokes[0].length];
        for (int i = 0; i < strokes.length; i++) {
            int share = (strokes.length + BEATS - 1 - i % BEATS) / BEATS;
            MultiplyAdd.run(1f / share, strokes[i], 0, means[i % BEATS], 0, strokes[i].length);
        }
        return new StrokePattern(means, seconds.length);
    }

    /** That of several stretches together, each by its length, loud beats with loud beats. */
    static StrokePattern ofAll(List<StrokePattern> stretches) {
        StrokePattern all = stretches.get(0);
        for (StrokePattern next : stretches.subList(1, stretches.size())) {
            all = all.with(next);
        }
        return all;
    }

    private StrokePattern with(StrokePattern other) {
        int shift = squares(other, 1) < squares(other, 0) ? 1 : 0;
        float part = (float) other.beats / (beats + other.beats);
        float[][] together = new float[BEATS][means[0].length];
        for (int beat = 0; beat < BEATS; beat++) {
            MultiplyAdd.run(1 - part, means[beat], 0, together[beat], 0, together[beat].length);
            MultiplyAdd.run(part, other.means[(beat + shift) % BEATS], 0, together[beat], 0, together[beat].length);
        }
        return new StrokePattern(together, beats + other.beats);
    }

    /** How unlike another pattern it is, whichever of its beats is the loud one; 0 = the same. */
    double distance(StrokePattern other) {
        return Math.sqrt(Math.min(squares(other, 0), squares(other, 1)) / (BEATS * means[0].length));
    }

    private double squares(StrokePattern other, int shift) {
        double sum = 0;
        for (int beat = 0; beat < BEATS; beat++) {
            float[] here = means[beat];
            float[] there = other.means[(beat + shift) % BEATS];
            for (int k = 0; k < here.length; k++) {
                sum += (here[k] - there[k]) * (here[k] - there[k]);
            }
        }
        return sum;
    }
}
