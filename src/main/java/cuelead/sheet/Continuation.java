package cuelead.sheet;

/** Whether a line without counts goes on from the count line above it, or leads to the counts at the end of the next. */
final class Continuation {
    private Continuation() {}

    static boolean goesOn(LaidLine above, Row row) {
        if (row.kind() == LineKind.NOTE) {
            return row.line().text().charAt(row.line().firstColumn() - 1) == '(';
        }
        boolean whole = LineFit.fits(above.text());
        boolean together = LineFit.fits(joined(above, row.line()).text());
        if (whole) {
            return !row.apart() && together && isRemark(row.line());
        }
        return together || (!row.apart() && (endsOpen(above.text()) || beginsSmall(row.line())));
    }

    /** "weight on left", "facing 3:00": no action of its own. */
    private static boolean isRemark(SheetLine line) {
        return beginsSmall(line) && !DanceLine.isDanced(line.text());
    }

    private static boolean beginsSmall(SheetLine line) {
        return Character.isLowerCase(line.text().charAt(line.firstColumn() - 1));
    }

    private static boolean endsOpen(String text) {
        String end = text.stripTrailing();
        return !end.isEmpty() && ",;&-/(".indexOf(end.charAt(end.length() - 1)) >= 0;
    }

    /** A word that was broken at the end of the line is put together again. */
    static LaidLine joined(LaidLine above, SheetLine line) {
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
        LaidLine first = SheetLayout.line(below, below.counted().get(0));
        return below.counted().size() == 1
                && !LineFit.fits(first.text())
                && DanceLine.isDanced(row.line().text())
                && LineFit.fits(led(row.line(), first).text());
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
