package cuelead.compose;

import cuelead.time.Beats;

/**
 * A note of a tune.
 *
 * @param start    from the beginning of its passage
 * @param pitch    MIDI, 60 = middle C
 * @param accented whether it is to be played louder than its neighbours
 */
record TuneNote(Beats start, Beats length, int pitch, boolean accented) {
    /** The same note, held longer. */
    TuneNote heldFor(Beats more) {
        return new TuneNote(start, length.plus(more), pitch, accented);
    }
}
