package cuelead.english;

import java.util.List;

/** Several things in one sentence: "5, 7 and 12". */
public final class Enumeration {
    private Enumeration() {}

    /**
     * Joins words as they are spoken.
     *
     * @param words at least one
     */
    public static String of(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
