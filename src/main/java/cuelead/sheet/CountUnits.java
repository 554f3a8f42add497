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
        int at = Spaces.forward(line, end);
        at = at < line.length() && JOINTS.indexOf(line.charAt(at)) >= 0 ? Spaces.forward(line, at + 1) : at;
        int behind = Scanner.wordEnd(line, at);
        String word = Scanner.plain(line.substring(at, behind));
        return word.equals("x")
                ? !isCross(Scanner.tokens(line.substring(behind, Math.min(line.length(), behind + LOOKED_AT))), counts)
                : UNITS.contains(word) || word.equals("o'clock") || word.equals("oclock");
    }

    private static final String JOINTS = "-/";

    /** Characters; what stands further away belongs to other steps. */
    private static final int LOOKED_AT = 40;

    /** "5-6 x R over L" and "3 x L behind R" cross a foot; "2 x jazz box" and "3 x R heel" tell how often. */
    private static boolean isCross(List<Token> behind, int counts) {
        boolean across = behind.stream().anyMatch(token -> token.is(Token.Kind.WORD) && CROSSED.contains(token.text()));
        return !behind.isEmpty() && (counts > 1 || across);
    }
}
