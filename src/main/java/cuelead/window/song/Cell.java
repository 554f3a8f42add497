package cuelead.window.song;

/**
 * A beat of the song.
 *
 * @param beat      its index in the grid
 * @param seconds   from the song's first frame
 * @param songCount its count in the phrase, or its beat in the bar where phrases are not known
 * @param danced    the count of the section that is danced on it; empty where none is
 * @param begins    what begins with it, other than its row; may be empty
 * @param isUnsure  whether it may be wrong
 */
record Cell(int beat, double seconds, int songCount, String danced, String begins, boolean isUnsure) {
    /** Whether the dance counts otherwise than the song. */
    boolean isOffThePhrase() {
        return !danced.isEmpty() && !danced.equals(Integer.toString(songCount));
    }
}
