package cuelead.compose;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;

/**
 * A note that a player is to play, in musical time.
 *
 * @param start    from the song's first beat
 * @param pitch    MIDI; for the kit the key of the drum
 * @param velocity 1 to 127
 */
record ScoreNote(Player player, BeatPosition start, Beats length, int pitch, int velocity) {}
