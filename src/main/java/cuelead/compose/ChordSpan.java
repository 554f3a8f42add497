package cuelead.compose;

import cuelead.time.Beats;

/**
 * A chord and how long it lasts.
 *
 * @param start  from the beginning of its passage
 * @param length never across a bar line
 */
record ChordSpan(Beats start, Beats length, Chord chord) {}
