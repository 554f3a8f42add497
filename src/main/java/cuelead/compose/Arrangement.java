package cuelead.compose;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.List;

/**
 * Every note of the song in musical time, and the beats that are danced.
 *
 * @param notes  in no order
 * @param beats  the grid's beats, the first at position 0
 * @param length from the first beat to where the last chord is let go
 */
record Arrangement(List<ScoreNote> notes, List<GridBeat> beats, List<Stretch> stretches, Beats length) {
    /**
     * A beat of the grid.
     *
     * @param inBar 1 = first of its bar
     * @param count 1 = first of its eight (in a waltz: of its six)
     */
    record GridBeat(int inBar, int count) {}

    /** A passage where it is played: its start, how many grid beats, and its push (see {@link FormLine}). */
    record Stretch(String passage, BeatPosition start, int beats, double push) {}

    Arrangement {
        notes = List.copyOf(notes);
        beats = List.copyOf(beats);
        stretches = List.copyOf(stretches);
    }
}
