package cuelead.compose;

import cuelead.time.Beats;

/**
 * A chord as those who play the chords see it.
 *
 * @param start  from the beginning of the passage
 * @param length at most a bar
 * @param next   the chord after it, perhaps of the next passage; itself at the end of the song
 */
record Slot(Beats start, Beats length, Chord chord, Chord next) {
    boolean changes() {
        return !next.equals(chord);
    }
}
