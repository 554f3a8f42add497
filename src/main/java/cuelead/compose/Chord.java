package cuelead.compose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A chord by its name.
 *
 * @param root      pitch class, C = 0
 * @param intervals semitones of its tones above the root, the root's 0 first
 * @param bass      pitch class of the lowest tone
 */
record Chord(String name, int root, List<Integer> intervals, int bass) {
    private static final int OCTAVE = 12;
    private static final Pattern TEXT = Pattern.compile("([A-G][#b]?)([a-z0-9]*)(?:/([A-G][#b]?))?");
    private static final Map<String, List<Integer>> QUALITIES = Map.ofEntries(
            Map.entry("", List.of(0, 4, 7)),
            Map.entry("m", List.of(0, 3, 7)),
            Map.entry("7", List.of(0, 4, 7, 10)),
            Map.entry("m7", List.of(0, 3, 7, 10)),
            Map.entry("maj7", List.of(0, 4, 7, 11)),
            Map.entry("6", List.of(0, 4, 7, 9)),
            Map.entry("m6", List.of(0, 3, 7, 9)),
            Map.entry("sus4", List.of(0, 5, 7)),
            Map.entry("7sus4", List.of(0, 5, 7, 10)),
            Map.entry("sus2", List.of(0, 2, 7)),
            Map.entry("add9", List.of(0, 2, 4, 7)),
            Map.entry("5", List.of(0, 7)),
            Map.entry("dim", List.of(0, 3, 6)),
            Map.entry("dim7", List.of(0, 3, 6, 9)));

    Chord {
        intervals = List.copyOf(intervals);
    }

    /** Reads a name such as {@code G}, {@code Am7}, {@code D7sus4} or {@code C/E}. */
    static Optional<Chord> parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches() || !QUALITIES.containsKey(matcher.group(2))) {
            return Optional.empty();
        }
        int root = Key.pitchClass(matcher.group(1));
        int bass = matcher.group(3) == null ? root : Key.pitchClass(matcher.group(3));
        return Optional.of(new Chord(text, root, QUALITIES.get(matcher.group(2)), bass));
    }

    /** Whether a pitch is one of its tones. */
    boolean contains(int pitch) {
        int above = Math.floorMod(pitch - root, OCTAVE);
        return intervals.contains(above) || Math.floorMod(pitch, OCTAVE) == bass;
    }

    /** Pitch class of its third, or whatever stands for it (the fourth of a sus4). */
    int third() {
        return Math.floorMod(root + (intervals.size() > 2 ? intervals.get(1) : 0), OCTAVE);
    }

    /** Pitch class of its fifth. */
    int fifth() {
        int index = intervals.indexOf(7);
        return Math.floorMod(root + (index >= 0 ? 7 : intervals.contains(6) ? 6 : 0), OCTAVE);
    }
}
