package cuelead.compose;

import cuelead.time.Beats;

/**
 * A note within a passage before its player and loudness of the day are known.
 *
 * @param start    from the beginning of the passage
 * @param velocity as at full level, 1 to 127
 */
record Stroke(Beats start, Beats length, int pitch, int velocity) {}
