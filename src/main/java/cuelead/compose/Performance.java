package cuelead.compose;

import java.util.List;

/**
 * What is heard and when, in seconds from the first frame of the song.
 *
 * @param beats   the times of the grid's beats, strictly rising
 * @param notes   sorted by start
 * @param seconds how long the song is
 */
record Performance(List<Double> beats, List<SoundedNote> notes, double seconds) {
    /**
     * A note when its attack and its end are heard.
     *
     * @param pitch    MIDI; for the kit the key of the drum
     * @param velocity 1 to 127
     */
    record SoundedNote(Player player, double startSeconds, double endSeconds, int pitch, int velocity) {}

    Performance {
        beats = List.copyOf(beats);
        notes = List.copyOf(notes);
    }
}
