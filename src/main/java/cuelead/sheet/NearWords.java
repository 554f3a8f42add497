package cuelead.sheet;

import cuelead.sheet.Vocabulary.Meaning;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The known words that a mistyped one is near to. Safe on any thread. */
final class NearWords {
    /** Shorter words are one letter away from too many others. */
    private static final int SHORTEST = 4;

    private static final int LONG = 8;

    private final Map<String, Meaning> meanings;
    /** Words without a space that may be mistyped, by their first letter. */
    private final Map<Character, List<String>> byLetter;

    /** A sheet is laid out many times over, and its mistyped words are looked up each time. */
    private static final int MOST_REMEMBERED = 1000;

    private final Map<String, Optional<String>> nearest = new ConcurrentHashMap<>();
    private final Map<String, Optional<String>> meant = new ConcurrentHashMap<>();

    /** {@code meanings} must be complete. */
    NearWords(Map<String, Meaning> meanings) {
        this.meanings = Map.copyOf(meanings);
        this.byLetter = meanings.keySet().stream()
                .filter(known -> known.length() >= SHORTEST && known.indexOf(' ') < 0)
                .collect(Collectors.groupingBy(known -> known.charAt(0)));
    }

    /**
     * The known word with the fewest changed letters, when it is near enough to be meant: one letter in a short word,
     * two in a long one. Among equals a word with the same first letter, then the usual form of a word, then the longer.
     */
    Optional<String> nearest(String word) {
        return remembered(nearest, word, this::findNearest);
    }

    private static Optional<String> remembered(
            Map<String, Optional<String>> known, String word, Function<String, Optional<String>> find) {
        if (known.size() > MOST_REMEMBERED) {
            known.clear();
        }
        return known.computeIfAbsent(word, find);
    }

    private Optional<String> findNearest(String word) {
        int allowed = word.length() <= 4 ? 1 : 2;
        return meanings.entrySet().stream()
                .filter(known -> known.getValue().kind() != Term.Kind.FILLER)
                .map(Map.Entry::getKey)
                .filter(known -> known.length() > 2 && Math.abs(known.length() - word.length()) <= allowed)
                .filter(known -> Spelling.distance(known, word) <= allowed)
                .min(nearestFirst(word));
    }

    private Comparator<String> nearestFirst(String word) {
        return Comparator.comparingInt((String known) -> Spelling.distance(known, word))
                .thenComparing(known -> known.charAt(0) == word.charAt(0) ? 0 : 1)
                .thenComparing(known -> meanings.get(known).word().equals(known) ? 0 : 1)
                .thenComparing(known -> -known.length())
                .thenComparing(Comparator.naturalOrder());
    }

    /**
     * The word that can only be meant: one slip of the pen away (two in a long word), with the same first letter, and no
     * word of another meaning as near. A slip in a word of four letters is a letter left out or two that changed places.
     */
    Optional<String> meant(String word) {
        return remembered(meant, word, this::findMeant);
    }

    private Optional<String> findMeant(String word) {
        for (int slips = 1; slips <= (word.length() >= LONG ? 2 : 1); slips++) {
            Set<Meaning> found = new HashSet<>();
            Optional<String> near = Optional.empty();
            for (String known : word.isEmpty() ? List.<String>of() : byLetter.getOrDefault(word.charAt(0), List.of())) {
                Meaning meaning = meanings.get(known);
                boolean small = meaning.kind() == Term.Kind.FILLER && word.length() < LONG;
                if (!small && isSlip(known, word, slips)) {
                    found.add(meaning);
                    near = near.isEmpty() || nearestFirst(word).compare(known, near.get()) < 0
                            ? Optional.of(known)
                            : near;
                }
            }
            if (!found.isEmpty()) {
                return found.size() == 1 ? near : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static boolean isSlip(String known, String word, int slips) {
        boolean shaped = word.length() >= SHORTEST && Math.abs(known.length() - word.length()) <= slips;
        return shaped
                && (word.length() > SHORTEST || known.length() > word.length() || isSwapped(known, word))
                && Spelling.distance(known, word) <= slips;
    }

    private static boolean isSwapped(String known, String word) {
        return known.chars()
                .sorted()
                .boxed()
                .toList()
                .equals(word.chars().sorted().boxed().toList());
    }
}
