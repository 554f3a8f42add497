package cuelead.sheet;

import cuelead.dance.Section;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * How much of the end of a wall is not danced: "leave out the last 8 counts", "omit the last section".
 *
 * @param number how many of them
 * @param unit   what is told
 */
record LeftOut(int number, Unit unit) {
    /** In what it is told. */
    enum Unit {
        COUNTS,
        SECTIONS
    }

    private static final Set<String> LEAVES = Set.of(
            "leave",
            "leaving",
            "omit",
            "omitting",
            "skip",
            "skipping",
            "drop",
            "dropping",
            "miss",
            "missing",
            "without",
            "except",
            "minus",
            "cut");
    private static final Set<String> LAST = Set.of("last", "final");
    private static final Set<String> COUNTS = Set.of("count", "counts", "beats", "cts");
    private static final Set<String> SECTIONS = Set.of("section", "sections", "set", "sets");

    /** Empty where a line tells nothing of the kind. */
    static Optional<LeftOut> in(List<Token> line) {
        List<Token> tokens = SpelledNumbers.asNumbers(line);
        boolean leaves = false;
        for (int i = 0; i < tokens.size(); i++) {
            leaves |= isOneOf(tokens, i, LEAVES);
            if (leaves && isOneOf(tokens, i, LAST)) {
                boolean numbered = i + 1 < tokens.size() && isShortNumber(tokens.get(i + 1));
                int unit = numbered ? i + 2 : i + 1;
                int number = numbered ? Integer.parseInt(tokens.get(i + 1).text()) : 1;
                if (isOneOf(tokens, unit, COUNTS)) {
                    return Optional.of(new LeftOut(number, Unit.COUNTS));
                }
                if (isOneOf(tokens, unit, SECTIONS)) {
                    return Optional.of(new LeftOut(number, Unit.SECTIONS));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isShortNumber(Token token) {
        return token.is(Token.Kind.NUMBER) && token.text().length() <= LONGEST_NUMBER;
    }

    private static final int LONGEST_NUMBER = 3;

    private static boolean isOneOf(List<Token> tokens, int at, Set<String> words) {
        return at < tokens.size()
                && tokens.get(at).is(Token.Kind.WORD)
                && words.contains(tokens.get(at).text());
    }

    /** The last count that is danced; empty where nothing is left of the dance. */
    OptionalInt lastDanced(List<Section> sections) {
        int counts = sections.stream().mapToInt(Section::length).sum();
        int behind = unit == Unit.COUNTS
                ? number
                : sections.stream()
                        .skip(Math.max(0, sections.size() - number))
                        .mapToInt(Section::length)
                        .sum();
        return behind < counts ? OptionalInt.of(counts - behind) : OptionalInt.empty();
    }
}
