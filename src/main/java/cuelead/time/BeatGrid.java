package cuelead.time;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * The beats of a song: strictly rising times in seconds, never one tempo, since live bands drift. Each beat
 * knows its place in the bar and, where known, the count in the phrase. Between beats time runs evenly; before
 * the first and after the last beat the grid goes on at the tempo of its first and last four beats.
 *
 * <p>Immutable (the arrays are private copies); safe on any thread.
 */
public final class BeatGrid {
    /** The most beats averaged for the tempo beyond either end. */
    private static final int EDGE_BEATS = 4;

    private final double[] beatSeconds;
    private final int[] beatInBar;
    private final int[] countInPhrase;
    private final double edgeBefore;
    private final double edgeAfter;

    /**
     * @param beatSeconds at least two strictly rising times, seconds from the song's first frame
     * @param beatInBar   1 = first beat of its bar; same length
     * @param countInPhrase 1 = first of its phrase, 0 = not known; same length
     */
    public BeatGrid(double[] beatSeconds, int[] beatInBar, int[] countInPhrase) {
        if (beatSeconds.length < 2
                || beatInBar.length != beatSeconds.length
                || countInPhrase.length != beatSeconds.length) {
            throw new IllegalArgumentException("a grid needs two or more beats and equal columns: " + beatSeconds.length
                    + ", " + beatInBar.length + ", " + countInPhrase.length);
        }
        for (int i = 0; i < beatSeconds.length; i++) {
            if (!Double.isFinite(beatSeconds[i]) || (i > 0 && !(beatSeconds[i] > beatSeconds[i - 1]))) {
                throw new IllegalArgumentException("beat " + i + " is not after the one before: " + beatSeconds[i]);
            }
        }
        this.beatSeconds = beatSeconds.clone();
        this.beatInBar = beatInBar.clone();
        this.countInPhrase = countInPhrase.clone();
        int last = beatSeconds.length - 1;
        int span = Math.min(EDGE_BEATS, last);
        this.edgeBefore = (beatSeconds[span] - beatSeconds[0]) / span;
        this.edgeAfter = (beatSeconds[last] - beatSeconds[last - span]) / span;
    }

    /** An even grid, for practice without music: bars of {@code beatsPerBar}, no phrases. */
    public static BeatGrid steady(Tempo tempo, double firstBeatSeconds, int beats, int beatsPerBar) {
        double[] seconds = new double[beats];
        int[] inBar = new int[beats];
        for (int i = 0; i < beats; i++) {
            seconds[i] = firstBeatSeconds + i * tempo.secondsPerBeat();
            inBar[i] = 1 + i % beatsPerBar;
        }
        return new BeatGrid(seconds, inBar, new int[beats]);
    }

    /**
     * The same beats at other times.
     *
     * @param seconds where a time of these beats is in the other ones; rising
     */
    public BeatGrid timed(DoubleUnaryOperator seconds) {
        return new BeatGrid(Arrays.stream(beatSeconds).map(seconds).toArray(), beatInBar, countInPhrase);
    }

    public int size() {
        return beatSeconds.length;
    }

    /** Time of a beat, 0 = first; seconds from the song's first frame. */
    public double beatSeconds(int index) {
        return beatSeconds[index];
    }

    /** Place of a beat in its bar; 1 = first. */
    public int beatInBar(int index) {
        return beatInBar[index];
    }

    /** Count of a beat in its phrase; 1 = first, 0 = not known. */
    public int countInPhrase(int index) {
        return countInPhrase[index];
    }

    /** Index of the first beat that begins a bar; 0 when none does. */
    public int firstDownbeat() {
        for (int i = 0; i < beatInBar.length; i++) {
            if (beatInBar[i] == 1) {
                return i;
            }
        }
        return 0;
    }

    /** Seconds of any position, also between beats and beyond both ends. */
    public double secondsAt(BeatPosition position) {
        long index = position.beatIndex();
        int last = beatSeconds.length - 1;
        if (index < 0) {
            return beatSeconds[0] + position.since(BeatPosition.atBeat(0)).toDecimal() * edgeBefore;
        }
        if (index >= last) {
            return beatSeconds[last] + position.since(BeatPosition.atBeat(last)).toDecimal() * edgeAfter;
        }
        int i = (int) index;
        double fraction = position.since(BeatPosition.atBeat(i)).toDecimal();
        return beatSeconds[i] + fraction * (beatSeconds[i + 1] - beatSeconds[i]);
    }

    /** The position (nearest tick) of a time; the inverse of {@link #secondsAt}. */
    public BeatPosition positionAt(double seconds) {
        int last = beatSeconds.length - 1;
        if (seconds < beatSeconds[0]) {
            return BeatPosition.atBeat(0).plus(Beats.ofDecimal((seconds - beatSeconds[0]) / edgeBefore));
        }
        if (seconds >= beatSeconds[last]) {
            return BeatPosition.atBeat(last).plus(Beats.ofDecimal((seconds - beatSeconds[last]) / edgeAfter));
        }
        int found = Arrays.binarySearch(beatSeconds, seconds);
        int i = found >= 0 ? found : -found - 2;
        double fraction = (seconds - beatSeconds[i]) / (beatSeconds[i + 1] - beatSeconds[i]);
        return BeatPosition.atBeat(i).plus(Beats.ofDecimal(fraction));
    }

    /** Index of the beat nearest to a time. */
    public int nearestBeat(double seconds) {
        long nearest = Math.floorDiv(positionAt(seconds).ticks() + Beats.TICKS_PER_BEAT / 2, Beats.TICKS_PER_BEAT);
        return (int) Math.max(0, Math.min(beatSeconds.length - 1, nearest));
    }

    /** The median tempo of the whole grid. */
    public Tempo medianTempo() {
        double[] gaps = new double[beatSeconds.length - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = beatSeconds[i + 1] - beatSeconds[i];
        }
        Arrays.sort(gaps);
        return new Tempo(60 / gaps[gaps.length / 2]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BeatGrid grid
                && Arrays.equals(beatSeconds, grid.beatSeconds)
                && Arrays.equals(beatInBar, grid.beatInBar)
                && Arrays.equals(countInPhrase, grid.countInPhrase);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(beatSeconds);
    }
}
