package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
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
        return joined(lines, TornSentences::goesOn);
    }

    /**
     * A sheet that is written in paragraphs, as a letter is: the same lines, each sentence on one, steps and all. The
     * same list where most lines stand by themselves.
     */
    static List<SheetLine> paragraphs(List<SheetLine> lines) {
        return isProse(lines)
                ? joined(lines, (above, line) -> goesOn(above, line) || isTorn(above, line)).stream()
                        .flatMap(line -> walls(line).stream())
                        .toList()
                : lines;
    }

    private static List<SheetLine> joined(List<SheetLine> lines, BiPredicate<SheetLine, SheetLine> goesOn) {
        List<SheetLine> joined = new ArrayList<>();
        for (SheetLine line : lines) {
            int last = joined.size() - 1;
            if (last > 0 && goesOn.test(joined.get(last), line)) {
                joined.set(last, joined.get(last).and(line));
            } else {
                joined.add(line);
            }
        }
        return joined;
    }

    /** "Then you do it all again. After wall 3 there is a tag ...": what is told of a wall is a line of its own. */
    private static List<SheetLine> walls(SheetLine line) {
        Matcher end = SENTENCE.matcher(line.text());
        while (line.namesWall() && end.find()) {
            SheetLine before = line.part(0, end.start());
            SheetLine behind = line.part(end.end(), line.text().length());
            if (!before.namesWall()) {
                return List.of(before, behind);
            }
        }
        return List.of(line);
    }

    private static final Pattern SENTENCE =
            Pattern.compile("(?<=\\p{L}[.!?])\\s+(?=\\p{Lu}[^.!?]*\\b(?i:wall|time|round)\\b)");

    /** Whether most lines of the sheet go on in the next: it is written in paragraphs, as a letter is. */
    private static boolean isProse(List<SheetLine> lines) {
        int torn = 0;
        int pairs = 0;
        for (int i = 1; i < lines.size(); i++) {
            boolean pair = !lines.get(i - 1).isBlank() && !lines.get(i).isBlank();
            pairs += pair ? 1 : 0;
            torn += pair && isTorn(lines.get(i - 1), lines.get(i)) ? 1 : 0;
        }
        return torn >= FEWEST_TORN && torn * 2 > pairs;
    }

    private static final int FEWEST_TORN = 6;

    /** A long line without a stop above one that begins small, or with the numbers that it lacks. */
    private static boolean isTorn(SheetLine above, SheetLine line) {
        if (above.isBlank() || line.isBlank() || OwnLines.isOwn(above) || OwnLines.isOwn(line)) {
            return false;
        }
        char first = line.text().charAt(line.firstColumn() - 1);
        boolean small = Character.isLowerCase(first)
                && CountGroup.read(line.text()).isEmpty()
                && LineKind.of(line) != LineKind.SECTION;
        boolean numbers =
                Scanner.isDigit(first) && COUNTING.matcher(above.text()).find();
        boolean fraction = FRACTION.matcher(line.text()).find();
        boolean ended = ENDED.matcher(above.text()).find()
                && !LEADS.matcher(above.text()).find();
        return above.text().strip().length() >= SHORTEST && !ended && (small || numbers || fraction);
    }

    private static final Pattern FRACTION = Pattern.compile("^\\s*[13]/[248]\\b");
    /** "Counts 3&4:", whose steps come on the next line. */
    private static final Pattern LEADS = Pattern.compile("\\d:\\s*$");

    private static final Pattern COUNTING =
            Pattern.compile("(?:\\b(?:counts?|beats?|on|for|to|and|through)|[-,&(])\\s*$", Pattern.CASE_INSENSITIVE);

    private static boolean goesOn(SheetLine above, SheetLine line) {
        if (above.isBlank() || line.isBlank() || OwnLines.isOwn(above) || OwnLines.isOwn(line)) {
            return false;
        }
        if (isCountOf(above, line)) {
            return true;
        }
        boolean small = Character.isLowerCase(line.text().charAt(line.firstColumn() - 1));
        boolean torn = !ENDED.matcher(above.text()).find()
                && (above.text().strip().length() >= SHORTEST
                        || OPEN.matcher(above.text()).find()
                        || isSplitLength(above.text(), line.text()));
        return small && torn && !FACT.matcher(line.text()).matches() && (isTold(above) || moveNobody(above, line));
    }

    /** "(2), step L beside R (&)" below a step without its count. */
    private static boolean isCountOf(SheetLine above, SheetLine line) {
        return COUNT_FIRST.matcher(line.text()).lookingAt()
                && LineKind.of(above) == LineKind.COUNTS
                && !ENDED.matcher(above.text()).find();
    }

    private static final Pattern COUNT_FIRST = Pattern.compile("\\s*\\([0-9&]{1,3}\\)\\s*,");

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
        return told && !number && above.namesWall();
    }

    /** Words that move nobody, on both lines. */
    private static boolean moveNobody(SheetLine above, SheetLine line) {
        return LineKind.of(above) == LineKind.OTHER
                && LineKind.of(line) == LineKind.OTHER
                && !DanceLine.isDanced(above.text())
                && !line.isDanced();
    }
}
