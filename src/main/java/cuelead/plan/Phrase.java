package cuelead.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Words that a call may use.
 *
 * @param words what is said
 * @param worth how much is gained by saying them, against the other phrases of the same and of nearby counts
 */
record Phrase(String words, double worth) {
    private static final double NEEDED_WORTH = 10;

    /** Swaps left and right, for a figure danced as its mirror image. */
    static String mirrored(String words) {
        List<String> swapped = new ArrayList<>();
        for (String word : words.split(" ")) {
            swapped.add(
                    switch (word) {
                        case "left" -> "right";
                        case "right" -> "left";
                        default -> word;
                    });
        }
        return String.join(" ", swapped);
    }

    /** Phrases of a call that must be made, the fullest first. */
    static List<Phrase> needed(List<String> fullestFirst) {
        List<Phrase> phrases = new ArrayList<>();
        for (int i = 0; i < fullestFirst.size(); i++) {
            phrases.add(new Phrase(fullestFirst.get(i), NEEDED_WORTH - i));
        }
        return phrases;
    }

    static boolean namesSide(String words) {
        return !mirrored(words).equals(words);
    }
}
