package cuelead.window.song;

import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.util.Optional;

/**
 * The beat that is pointed at, and the stretch from there to where the pointing began.
 *
 * @param beat   index in the grid
 * @param anchor where the stretch began; the same beat where there is none
 */
record Selected(int beat, int anchor) {
    static final Selected FIRST = new Selected(0, 0);

    /** A beat alone. */
    static Selected at(int beat) {
        return new Selected(beat, beat);
    }

    /** Whether the beat that was pointed at before stays the other end. */
    enum Reach {
        A_BEAT,
        A_STRETCH
    }

    /** Another beat, held within the rows. */
    Selected to(int other, Reach reach, Rows rows) {
        int held = Math.max(0, Math.min(rows.beats() - 1, other));
        return reach == Reach.A_STRETCH ? new Selected(held, anchor) : at(held);
    }

    Selected step(int beats, Reach reach, Rows rows) {
        return to(beat + beats, reach, rows);
    }

    /** So many rows down, in the same place of its row, or in the last of a shorter one. */
    Selected rowsDown(int down, Reach reach, Rows rows) {
        int row = rows.rowOf(beat);
        int column = beat - rows.rows().get(row).first().beat();
        Row other = rows.rows().get(Math.max(0, Math.min(rows.rows().size() - 1, row + down)));
        return to(other.first().beat() + Math.min(column, other.cells().size() - 1), reach, rows);
    }

    boolean isStretch() {
        return beat != anchor;
    }

    int first() {
        return Math.min(beat, anchor);
    }

    int last() {
        return Math.max(beat, anchor);
    }

    boolean holds(int other) {
        return other >= first() && other <= last();
    }

    /** The stretch in the song, a little beyond its outer beats; empty where it is a beat alone. */
    Optional<Stretch> stretch(BeatGrid grid) {
        return isStretch()
                ? Optional.of(new Stretch(
                        grid.beatSeconds(first()) - beyond(grid, first(), -1),
                        grid.beatSeconds(last()) + beyond(grid, last(), 1)))
                : Optional.empty();
    }

    /** Less than half the way to the next beat. */
    private static double beyond(BeatGrid grid, int beat, int to) {
        int next = beat + to;
        double way = next < 0 || next >= grid.size()
                ? grid.medianTempo().secondsPerBeat()
                : Math.abs(grid.beatSeconds(next) - grid.beatSeconds(beat));
        return 0.3 * way;
    }

    /** The beats nearest to places of the song. */
    static Selected nearest(double beatSeconds, double anchorSeconds, BeatGrid grid) {
        return new Selected(grid.nearestBeat(beatSeconds), grid.nearestBeat(anchorSeconds));
    }
}
