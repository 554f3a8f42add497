package cuelead.sheet;

import java.util.List;
import java.util.Set;

/** Words that stand beside a number: those of counts that are danced, and those that make it a length or another thing. */
final class CountUnits {
    private static final Set<String> HEADS = Set.of("count", "counts", "ct", "cts", "beat", "beats");
    private static final Set<String> UNITS = Set.of(
            "count",
            "counts",
            "ct",
            "cts",
            "c",
            "beat",
            "beats",
            "wall",
            "walls",
            "w",
            "bpm",
            "mpm",
            "times",
            "time",
            "restart",
            "restarts",
            "tag",
            "tags",
            "bridge",
            "bridges",
            "o",
            "second",
            "seconds",
            "sec",
            "secs",
            "minutes",
            "min",
            "steps",
            "more",
            "parts",
            "sections",
            "eights",
            "sixes",
            "bars");
    private static final Set<String> CROSSED = Set.of("over", "across", "behind", "in", "beh", "infront");

    private CountUnits() {}

    /** "Counts 1-2:" */
    static boolean leads(String word) {
        return HEADS.contains(word);
    }

    /** Whether such a word stands at this 0-based index, behind so many counts. */
    static boolean stand(String line, int end, int counts) {
        List<Token> words = Scanner.tokens(line.substring(end, Math.min(line.length(), end + LOOKED_AT)));
        int at = !words.isEmpty() && isJoint(words.get(0)) ? 1 : 0;
        if (at >= words.size() || !words.get(at).is(Token.Kind.WORD)) {
            return false;
        }
        return words.get(at).text().equals("x")
                ? !isCross(words.subList(at + 1, words.size()), counts)
                : UNITS.contains(words.get(at).text()) || words.get(at).text().matches("o'?clock");
    }

    /** Characters; what stands further away belongs to other steps. */
    private static final int LOOKED_AT = 40;

    private static boolean isJoint(Token token) {
        return token.text().equals("-") || token.text().equals("/");
    }

    /** "5-6 x R over L" and "3 x L behind R" cross a foot; "2 x jazz box" and "3 x R heel" tell how often. */
    private static boolean isCross(List<Token> behind, int counts) {
        boolean across = behind.stream().anyMatch(token -> token.is(Token.Kind.WORD) && CROSSED.contains(token.text()));
        return !behind.isEmpty() && (counts > 1 || across);
    }
}
