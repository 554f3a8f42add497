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

    static boolean namesSide(String words) {
        return !mirrored(words).equals(words);
    }
}
