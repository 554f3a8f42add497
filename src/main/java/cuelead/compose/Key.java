package cuelead.compose;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A major or natural minor key.
 *
 * @param tonic pitch class of degree 1, C = 0
 */
record Key(int tonic, Mode mode) {
    /** Major or natural minor. */
    enum Mode {
        MAJOR,
        MINOR
    }

    private static final List<Integer> MAJOR_STEPS = List.of(0, 2, 4, 5, 7, 9, 11);
    private static final List<Integer> MINOR_STEPS = List.of(0, 2, 3, 5, 7, 8, 10);

    /** MIDI pitch of the lowest unmarked degree 1, the A below middle C. */
    private static final int LOWEST_TONIC = 57;

    private static final int OCTAVE = 12;
    private static final int[] LETTERS = {9, 11, 0, 2, 4, 5, 7};
    private static final Pattern TEXT = Pattern.compile("([A-G][#b]?) (major|minor)");

    /** Reads {@code G major} or {@code F# minor}. */
    static Optional<Key> parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Mode mode = matcher.group(2).equals("major") ? Mode.MAJOR : Mode.MINOR;
        return Optional.of(new Key(pitchClass(matcher.group(1)), mode));
    }

    /** Pitch class of a note name: a letter A to G and at most one {@code #} or {@code b}. */
    static int pitchClass(String name) {
        int sharpened = name.endsWith("#") ? 1 : name.length() > 1 ? -1 : 0;
        return Math.floorMod(LETTERS[name.charAt(0) - 'A'] + sharpened, OCTAVE);
    }

    /** MIDI pitch of degree 1 to 7, moved by semitones and octaves. */
    int pitch(int degree, int semitones, int octaves) {
        int lowest = LOWEST_TONIC + Math.floorMod(tonic - LOWEST_TONIC, OCTAVE);
        return lowest + steps().get(degree - 1) + semitones + OCTAVE * octaves;
    }

    /** Whether a pitch belongs to the scale. */
    boolean contains(int pitch) {
        return steps().contains(Math.floorMod(pitch - tonic, OCTAVE));
    }

    /** Semitones of the seven degrees above the tonic. */
    private List<Integer> steps() {
        return mode == Mode.MAJOR ? MAJOR_STEPS : MINOR_STEPS;
    }

    /** The nearest pitch of the scale below (direction -1) or above (direction 1) a pitch. */
    int neighbour(int pitch, int direction) {
        int found = pitch + direction;
        while (!contains(found)) {
            found += direction;
        }
        return found;
    }
}
