package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Sentences that were broken at the end of a line where nobody dances: above the dance, and where restarts, tags and the
 * ending are told ("on wall 5 dance to count 23, then" above "for count 24 touch R instead, and restart"). They are one
 * line again, so that the second half is no step and its numbers are no counts.
 */
final class TornSentences {
    /** Characters; a shorter line that does not end its sentence is a heading or a fact. */
    private static final int SHORTEST = 40;

    private static final Pattern ENDED = Pattern.compile("(?:[.!?:][\"')\\]]*|[)\\]])\\s*$");
    private static final Pattern OPEN = Pattern.compile(
            "(?:[,;&(-]|\\b(?:and|or|then|the|a|an|on|at|to|of|for|after|with|in|by|but|facing|dance|has|is))\\s*$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FACT = Pattern.compile("^\\W*[\\p{L}' ]{2,24}:.*");

    private TornSentences() {}

    /** The same lines, each such sentence on one. */
    static List<SheetLine> joined(List<SheetLine> lines) {
        List<SheetLine> joined = new ArrayList<>();
        for (SheetLine line : lines) {
            int last = joined.size() - 1;
            if (last > 0 && goesOn(joined.get(last), line)) {
                joined.set(last, joined.get(last).and(line));
            } else {
                joined.add(line);
            }
        }
        return joined;
    }

    private static boolean goesOn(SheetLine above, SheetLine line) {
        if (above.isBlank() || line.isBlank() || OwnLines.isOwn(above) || OwnLines.isOwn(line)) {
            return false;
        }
        boolean small = Character.isLowerCase(line.text().charAt(line.firstColumn() - 1));
        boolean torn = !ENDED.matcher(above.text()).find()
                && (above.text().strip().length() >= SHORTEST
                        || OPEN.matcher(above.text()).find()
                        || isSplitLength(above.text(), line.text()));
        return small && torn && !FACT.matcher(line.text()).matches() && (isTold(above) || isProse(above, line));
    }

    /** "It has 32" above "counts and four walls". */
    private static boolean isSplitLength(String above, String line) {
        String number = above.stripTrailing();
        return Scanner.isDigit(number.charAt(number.length() - 1))
                && UNIT.matcher(line).find();
    }

    private static final Pattern UNIT =
            Pattern.compile("^\\W*(?:counts?|walls?|beats?|bars?|bpm)\\b", Pattern.CASE_INSENSITIVE);

    /** A restart, a tag or an ending that is told in words; its second half may name steps and counts. */
    private static boolean isTold(SheetLine above) {
        LineKind kind = LineKind.of(above);
        boolean open = OPEN.matcher(above.text()).find();
        boolean told = kind == LineKind.RESTART || kind == LineKind.ENDING || (kind == LineKind.TAG && open);
        boolean number = Scanner.isDigit(
                above.text().stripTrailing().charAt(above.text().stripTrailing().length() - 1));
        return told && !number && WallNote.namesWall(above.tokens());
    }

    /** Words that move nobody, on both lines. */
    private static boolean isProse(SheetLine above, SheetLine line) {
        return LineKind.of(above) == LineKind.OTHER
                && LineKind.of(line) == LineKind.OTHER
                && !DanceLine.isDanced(above.text())
                && !DanceLine.isDanced(line.text());
    }
}
