package cuelead.compose;

/**
 * A member of the band.
 *
 * @param volume   0 to 127
 * @param pan      -64 (left) to 63 (right)
 * @param room     reverberation, 0 to 127
 * @param octaves  how many octaves above the written pitch it plays its tunes
 */
record Player(String name, Instrument instrument, int volume, int pan, int room, int octaves) {}
