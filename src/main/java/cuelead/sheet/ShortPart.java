package cuelead.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of a part is danced where the sequence says so beside its name: "A(16)", "A (first 4 counts)", "A (1-8)",
 * "8 counts of A", "A up to count 8", "half A", "A (omit the last 8)".
 *
 * @param kind   what the number is
 * @param counts the number; 0 for a half
 */
record ShortPart(Kind kind, int counts) {
    /** What is told. */
    enum Kind {
        /** So many counts are danced. */
        FIRST,
        /** So many are left out at its end. */
        WITHOUT_LAST,
        /** Half of its counts. */
        HALF,
        /** It is not clear how many. */
        UNCLEAR
    }

    private static final String UNIT = "(?:\\s*-?\\s*(?:counts?|cts?\\.?|beats?|c)\\b)";
    private static final String HALVES = "(?:first |the |only )*(?:half|1/2|\\u00bd)(?: of| the| only)*";
    private static final String LEAVES =
            "(?:omit(?:ting)?|without|minus|less|not|skip(?:ping)?|drop(?:ping)?|leav(?:e|ing)(?: out| off)?|no)";
    /** "first 8 counts of" before the name; "(...)", "-8", "8 counts", "up to count 8", "/2" behind it. */
    private static final Pattern PART = Pattern.compile(
            "(?<![A-Za-z0-9])(?:(?<before>(?:(?:only|just|the|first) )*\\d{1,2}" + UNIT + "? of (?:part )?|" + HALVES
                    + "\\s+(?:part )?))?"
                    + "(?<name>[A-F])(?![A-Za-z0-9])(?<mark>[*'+-]*)"
                    + "(?<behind>\\s*[(\\[](?<inner>[^()\\[\\]]*)[)\\]]|(?<=-)\\d{1,2}(?![\\dx:])" + UNIT
                    + "?|\\s+\\d{1,2}(?![\\dx:])" + UNIT + "?"
                    + "|\\s+(?:up )?(?:to|until|till|through) count \\d{1,2}|/2\\b)?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern FIRST = Pattern.compile(
            "(?:(?:only|just|the|first|dance|danced|counts?|beats?|up|to|until|till|thru|through|after|at|end|of|then"
                    + "|restart|short|1 ?- ?(?=\\d)|1 to (?=\\d)|[=:,.-])\\s*)*(\\d{1,2})" + UNIT
                    + "?(?:[\\s,.;-]*(?:only|then|and|restart|again|of|it|part))*\\W*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WITHOUT = Pattern.compile(
            "\\W*" + LEAVES + "(?: the)?(?: last| final)?\\s*(\\d{1,2})" + UNIT + "?\\W*", Pattern.CASE_INSENSITIVE);
    private static final Pattern HALF = Pattern.compile("\\W*" + HALVES + "\\W*|/2", Pattern.CASE_INSENSITIVE);
    private static final Pattern TELLS_LENGTH = Pattern.compile(
            "\\b(?:counts?|half|restart|omit|without|short|last|until|first \\d+)\\b", Pattern.CASE_INSENSITIVE);
    /** "A(2)" may as well be twice. */
    private static final int SHORTEST = 3;

    /**
     * A name and what is said beside it.
     *
     * @param from  0-based index of the first character of what is said and of the name
     * @param name  index of the name
     * @param to    behind the last character
     * @param part  how much of it
     */
    record Placed(int from, int name, int to, ShortPart part) {}

    /** The first from this index on. */
    static Optional<Placed> find(String text, int from) {
        Matcher part = PART.matcher(text);
        for (int at = from; part.find(at); at = Math.max(part.end("mark"), part.end())) {
            Optional<ShortPart> told = read(part);
            if (told.isPresent()) {
                return Optional.of(new Placed(part.start(), part.start("name"), part.end(), told.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<ShortPart> read(Matcher part) {
        String words = part.group("inner") != null
                ? part.group("inner")
                : part.group("behind") != null ? part.group("behind") : part.group("before");
        return words == null ? Optional.empty() : read(words.strip());
    }

    private static Optional<ShortPart> read(String words) {
        if (words.toLowerCase(Locale.ROOT).matches("x ?\\d|\\d ?x|twice|.*\\d[:.]\\d\\d.*")) {
            return Optional.empty();
        }
        Matcher without = WITHOUT.matcher(words);
        if (without.matches()) {
            return Optional.of(new ShortPart(Kind.WITHOUT_LAST, Integer.parseInt(without.group(1))));
        }
        Matcher first = FIRST.matcher(words);
        boolean counted = first.matches() && Integer.parseInt(first.group(1)) >= SHORTEST;
        if (counted) {
            return Optional.of(new ShortPart(Kind.FIRST, Integer.parseInt(first.group(1))));
        }
        if (HALF.matcher(words).matches()) {
            return Optional.of(new ShortPart(Kind.HALF, 0));
        }
        return TELLS_LENGTH.matcher(words).find() ? Optional.of(new ShortPart(Kind.UNCLEAR, 0)) : Optional.empty();
    }

    boolean isUnclear() {
        return kind == Kind.UNCLEAR;
    }

    /** How many counts are danced of a part of so many; 0 = all, or not known. */
    int of(int length) {
        int danced =
                switch (kind) {
                    case FIRST -> counts;
                    case WITHOUT_LAST -> length - counts;
                    case HALF -> length / 2;
                    case UNCLEAR -> 0;
                };
        return danced > 0 && danced < length ? danced : 0;
    }
}
