package cuelead.compose;

import java.util.List;
import java.util.Map;

/**
 * A passage of music that the form may play any number of times.
 *
 * @param kind      where it may stand
 * @param beats     beats that the grid counts of it
 * @param fullBeats beats of music written: as many, but for a final passage, which rings on after its last beat
 * @param chords    in order, without gaps; none in a pickup without chords
 * @param voices    tunes by name
 */
record Passage(
        String name, Kind kind, int beats, int fullBeats, List<ChordSpan> chords, Map<String, List<TuneNote>> voices) {
    /** Where a passage may stand. */
    enum Kind {
        /** Whole bars, anywhere. */
        BARS,
        /** The last beats of a bar, before the first downbeat. */
        PICKUP,
        /** The first beats of a bar that rings on after the last beat that is danced. */
        FINAL
    }

    Passage {
        chords = List.copyOf(chords);
        voices = Map.copyOf(voices);
    }
}
