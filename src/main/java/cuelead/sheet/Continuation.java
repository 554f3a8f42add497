package cuelead.sheet;

import java.util.Optional;
import java.util.regex.Pattern;

/** Whether a line without counts goes on from the count line above it, or leads to the counts at the end of the next. */
final class Continuation {
    private Continuation() {}

    static boolean goesOn(LaidLine above, Row row) {
        if (row.kind() == LineKind.NOTE) {
            boolean bracket = row.line().text().charAt(row.line().firstColumn() - 1) == '(';
            return bracket && TimesOnWalls.below(row.line()).isEmpty();
        }
        if (RepeatCall.isCounted(above.text()) && !beginsSmall(row.line())) {
            return false;
        }
        int alone = above.cost();
        int together = joined(above, row.line()).wholeCost();
        if (alone < STRAINED) {
            boolean runsOn = endsOpen(above.text()) || beginsSmall(row.line()) || lacksFoot(above.text(), row.line());
            boolean broken = runsOn && !row.apart() && together < STRAINED;
            return broken || (!row.apart() && together < LineFit.IMPOSSIBLE && isRemark(row.line()));
        }
        boolean better = together < alone;
        boolean neither = alone == LineFit.IMPOSSIBLE && !row.apart();
        return better || (neither && (endsOpen(above.text()) || beginsSmall(row.line())));
    }

    /** "..., cross" above "L behind R": a verb that has its foot on the next line. */
    private static boolean lacksFoot(String above, SheetLine line) {
        return VERB_LAST.matcher(above).find()
                && FOOT_FIRST.matcher(line.text()).find();
    }

    private static final Pattern VERB_LAST = Pattern.compile(
            "[,;&)]\\s*(?:and\\s+|then\\s+)?(?:cross|step|touch|rock|point|lock|kick|close|walk|turn [^,;]*stepping)\\s*$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FOOT_FIRST =
            Pattern.compile("^\\s*(?:R|L|RF|LF|right|left)\\b(?!\\s*[:.])", Pattern.CASE_INSENSITIVE);

    /** The line above with these words, where it fills its counts with them and not without them. */
    static Optional<LaidLine> completed(LaidLine above, SheetLine words) {
        if (words.isBlank() || above.fits()) {
            return Optional.empty();
        }
        return Optional.of(joined(above, words)).filter(LaidLine::fits);
    }

    /** Above this a touch or a kick would be held over several counts. */
    private static final int STRAINED = 10;

    /** "weight on left", "side": no action of its own. */
    private static boolean isRemark(SheetLine line) {
        return beginsSmall(line) && DanceLine.movesNoFoot(line.text());
    }

    private static boolean beginsSmall(SheetLine line) {
        return Character.isLowerCase(line.text().charAt(line.firstColumn() - 1));
    }

    static boolean endsOpen(String text) {
        String end = text.substring(0, clockAt(text)).stripTrailing();
        return !end.isEmpty() && ",;&-/(".indexOf(end.charAt(end.length() - 1)) >= 0;
    }

    /** Where a clock time stands at the end, in a column of its own; the length without one. */
    private static int clockAt(String text) {
        String end = text.stripTrailing();
        int at = end.length();
        while (at > 0 && "0123456789:.".indexOf(end.charAt(at - 1)) >= 0) {
            at--;
        }
        boolean clock = end.length() - at >= 4 && end.substring(at).matches("\\d{1,2}[:.]\\d\\d");
        return clock && at > 0 && Scanner.isSpace(end.charAt(at - 1)) ? at : text.length();
    }

    /** A word that was broken at the end of the line is put together again; a clock time in the last column stays last. */
    static LaidLine joined(LaidLine above, SheetLine line) {
        int clock = clockAt(above.text());
        LaidLine body = new LaidLine(above.text().substring(0, clock), above.kind(), above.pieces());
        LaidLine joined = put(body, line);
        if (clock == above.text().length()) {
            return joined;
        }
        LaidLine.Piece last = above.pieces().get(above.pieces().size() - 1);
        return new LaidLine.Builder()
                .add(joined)
                .add(above.text().substring(clock), last.line(), clock - last.from() + last.index())
                .line();
    }

    private static LaidLine put(LaidLine above, SheetLine line) {
        String text = above.text().stripTrailing();
        int from = line.firstColumn() - 1;
        boolean broken = text.endsWith("-")
                && text.length() > 1
                && Character.isLetter(text.charAt(text.length() - 2))
                && beginsSmall(line);
        if (!broken) {
            return new LaidLine.Builder()
                    .add(above)
                    .add(line, from, line.text().length())
                    .line();
        }
        int end = from;
        while (end < line.text().length() && Character.isLetter(line.text().charAt(end))) {
            end++;
        }
        LaidLine cut = new LaidLine(
                text.substring(0, text.length() - 1) + line.text().substring(from, end), above.kind(), above.pieces());
        return new LaidLine.Builder()
                .add(cut)
                .add(line, end, line.text().length())
                .line();
    }

    /** Whether the steps above make the counts of the row below whole. */
    static boolean leadsTo(Row row, Row below) {
        LaidLine first = LaidRow.line(below, below.counted().get(0));
        return below.counted().size() == 1
                && DanceLine.isDanced(row.line().text())
                && led(row.line(), first).cost() < first.cost();
    }

    /** The counts of the laid line, then the line above, then the rest of the laid one. */
    static LaidLine led(SheetLine above, LaidLine counted) {
        LaidLine.Piece group = counted.pieces().get(0);
        LaidLine.Piece steps = counted.pieces().get(1);
        return new LaidLine.Builder()
                .add(counted.text().substring(0, steps.from()).strip(), group.line(), group.index())
                .add(above, above.firstColumn() - 1, above.text().length())
                .add(counted.text().substring(steps.from()), steps.line(), steps.index())
                .line();
    }
}
