package cuelead.plan;

import cuelead.dance.CountRate;
import cuelead.dance.Counts;
import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;

/**
 * The dance laid over the beats: its runs in order, and every count with its beat, its wall and the way faced.
 * Immutable; made by {@link #lay}.
 *
 * @param dance      what is danced
 * @param grid       the beats of the song
 * @param countRate  counts a beat
 * @param runs       walls and tags in order; the last may be cut short by the end of the music
 * @param counts     in order of time
 * @param endSeconds the end of the music
 * @param ending     how the music leaves the dancers
 */
public record Timeline(
        Dance dance,
        BeatGrid grid,
        CountRate countRate,
        List<Run> runs,
        List<DancedCount> counts,
        double endSeconds,
        Ending ending) {
    /** Less music than that behind the last count is how songs end. */
    public static final double LONG_REST_SECONDS = 8;

    public Timeline {
        runs = List.copyOf(runs);
        counts = List.copyOf(counts);
    }

    /**
     * Where the dancers are when it ends.
     *
     * @param isWhole whether the last run was danced to its end
     * @param last    the last count danced; empty when the music ends before count 1
     * @param facing  the way faced then
     */
    public record Ending(boolean isWhole, Optional<DancedCount> last, Facing facing) {}

    /** Lays a dance over a grid. */
    public static Timeline lay(Dance dance, BeatGrid grid, Laying laying) {
        return new Layer(dance, grid, laying).lay();
    }

    /** The beat of count 1, whether or not the music reaches it. */
    public BeatPosition countOne() {
        return runs.get(0).start();
    }

    /** So many counts as beats of this grid: the one place where counts become beats. */
    public Beats beatsOf(Counts length) {
        return beatsOf(length, countRate);
    }

    /** How many counts, also in part, are danced in so many beats. */
    double countsOf(Beats length) {
        return length.toDecimal() * countRate.countsInTwoBeats() / 2;
    }

    static Beats beatsOf(Counts length, CountRate rate) {
        return new Beats(length.ticks() * 2 / rate.countsInTwoBeats());
    }

    /** How many counts of the dance go in a minute. */
    public Tempo countTempo() {
        return new Tempo(grid.medianTempo().beatsPerMinute() * countRate.countsInTwoBeats() / 2);
    }

    /** The counts of one run, in order of time. */
    public List<DancedCount> countsOf(Run run) {
        return counts.stream().filter(count -> count.run().equals(run)).toList();
    }

    /** Number of walls begun. */
    public int walls() {
        return runs.stream()
                .filter(run -> run.isWall())
                .mapToInt(Run::wall)
                .max()
                .orElse(0);
    }

    /** Music that lies behind the last count that is danced, in seconds. */
    public double restSeconds() {
        Run last = runs.get(runs.size() - 1);
        double end = grid.secondsAt(last.start().plus(beatsOf(Counts.of(last.counts()))));
        return ending.isWhole() ? Math.max(0, endSeconds - end) : 0;
    }

    /** Whether a sequence of parts is over long before the music. */
    public boolean isUsedUp() {
        boolean isEnding = runs.get(runs.size() - 1).isEnding();
        return dance.isPhrased() && !isEnding && restSeconds() >= LONG_REST_SECONDS;
    }

    /** The count being danced at a time: the last that has begun; empty before count 1. */
    public Optional<DancedCount> at(double songSeconds) {
        int low = 0;
        int high = counts.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (counts.get(middle).songSeconds() <= songSeconds) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(counts.get(low - 1));
    }
}
