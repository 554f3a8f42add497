package cuelead.song;

import cuelead.dsp.beat.Taps;
import cuelead.time.BeatGrid;
import java.util.Arrays;

/**
 * How well taps agree with beats.
 *
 * @param lateBeats    how much later than its beat the middle tap came, in beats
 * @param scatterBeats how far from that the taps lie on average, in beats
 * @param levelRatio   beats of the grid for each tap
 */
record TapMatch(double lateBeats, double scatterBeats, double levelRatio) {
    /** Taps come early or late by less than this; half a beat is another beat. */
    private static final double MOST_LATE_BEATS = 0.22;

    private static final double MOST_SCATTER_BEATS = 0.12;
    private static final double LEVEL_TOLERANCE = 0.12;

    static TapMatch of(Taps taps, BeatGrid beats) {
        double[] late = new double[taps.count()];
        for (int i = 0; i < late.length; i++) {
            int beat = beats.nearestBeat(taps.seconds(i));
            late[i] = (taps.seconds(i) - beats.beatSeconds(beat)) / spacing(beats, beat);
        }
        double[] sorted = late.clone();
        Arrays.sort(sorted);
        double middle = sorted[sorted.length / 2];
        double scatter =
                Arrays.stream(late).map(l -> Math.abs(l - middle)).average().orElse(0);
        int halfway = beats.nearestBeat(taps.seconds(taps.count() / 2));
        return new TapMatch(middle, scatter, taps.beatSeconds() / spacing(beats, halfway));
    }

    private static double spacing(BeatGrid beats, int beat) {
        int from = Math.max(0, Math.min(beats.size() - 2, beat - 1));
        int to = Math.min(beats.size() - 1, from + 2);
        return (beats.beatSeconds(to) - beats.beatSeconds(from)) / (to - from);
    }

    boolean isGood() {
        return Math.abs(lateBeats) <= MOST_LATE_BEATS
                && scatterBeats <= MOST_SCATTER_BEATS
                && Math.abs(levelRatio - 1) <= LEVEL_TOLERANCE;
    }

    /** Less is better. */
    double cost() {
        return Math.abs(lateBeats) + scatterBeats;
    }
}
