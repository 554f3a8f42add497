package cuelead.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Words that a call may use.
 *
 * @param words what is said
 * @param worth how much is gained by saying them, against the other phrases of the same and of nearby counts
 * @param reach whether they may come earlier than wanted
 */
record Phrase(String words, double worth, Reach reach) {
    private static final double NEEDED_WORTH = 10;

    /** How far from its place a phrase that is a wish may be said. */
    enum Reach {
        AT_ITS_PLACE,
        /** A figure's name may come up to a beat early: it tells of several counts. */
        OR_EARLIER
    }

    /** Words that are said at their place or not at all. */
    Phrase(String words, double worth) {
        this(words, worth, Reach.AT_ITS_PLACE);
    }

    Phrase orEarlier() {
        return new Phrase(words, worth, Reach.OR_EARLIER);
    }

    /** The same words, said where they are worth less. */
    Phrase worthLess(double loss) {
        return new Phrase(words, worth - loss, reach);
    }

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
