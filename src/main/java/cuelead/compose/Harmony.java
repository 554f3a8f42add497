package cuelead.compose;

import java.util.ArrayList;
import java.util.List;

/**
 * A second voice in thirds and sixths: under (or over) each note of a tune the nearest chord tone that is a third
 * or more away; where the tune passes through a note that is foreign to the chord, a third of the scale.
 */
final class Harmony {
    private static final int MINOR_THIRD = 3;
    private static final int MAJOR_SIXTH = 9;

    private Harmony() {}

    static List<TuneNote> to(List<TuneNote> tune, Role.Side side, Key key, List<ChordSpan> chords) {
        List<TuneNote> harmony = new ArrayList<>();
        int direction = side == Role.Side.BELOW ? -1 : 1;
        for (TuneNote note : tune) {
            int pitch = second(note, direction, key, chords);
            harmony.add(new TuneNote(note.start(), note.length(), pitch, note.accented()));
        }
        return List.copyOf(harmony);
    }

    private static int second(TuneNote note, int direction, Key key, List<ChordSpan> chords) {
        Chord chord = chordAt(note, chords);
        if (chord.contains(note.pitch())) {
            for (int away = MINOR_THIRD; away <= MAJOR_SIXTH; away++) {
                if (chord.contains(note.pitch() + direction * away)) {
                    return note.pitch() + direction * away;
                }
            }
        }
        return key.neighbour(key.neighbour(note.pitch(), direction), direction);
    }

    /** The chord that sounds at a note's start; the chords must not be empty. */
    static Chord chordAt(TuneNote note, List<ChordSpan> chords) {
        Chord chord = chords.get(0).chord();
        for (ChordSpan span : chords) {
            if (span.start().compareTo(note.start()) <= 0) {
                chord = span.chord();
            }
        }
        return chord;
    }
}
