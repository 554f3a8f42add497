package cuelead.document;

import cuelead.document.PageRow.Piece;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The empty strip between two columns of a page.
 *
 * @param x its middle, in points
 */
record Gutter(double x) {
    private static final int FEW_COUNTS = 3;
    private static final double STEP_POINTS = 3;
    private static final Pattern RANGE = Pattern.compile("^\\W*(\\d+)(?:\\D{0,3}(\\d+))?.*");

    /**
     * Where both sides have lines of counts that do not go on from left to right, as they do where two count groups are
     * written on one line.
     */
    static Optional<Gutter> of(List<PageRow> rows) {
        double left = rows.stream().mapToDouble(PageRow::left).min().orElse(0);
        double right = rows.stream()
                .flatMap(row -> row.pieces().stream())
                .mapToDouble(Piece::right)
                .max()
                .orElse(0);
        Optional<Gutter> best = Optional.empty();
        long fewest = rows.size() / 3 + 1L;
        for (double x = left + 0.3 * (right - left); x < left + 0.7 * (right - left); x += STEP_POINTS) {
            Gutter gutter = new Gutter(x);
            long crossings = rows.stream().filter(gutter::isCrossedBy).count();
            if (crossings < fewest && gutter.partsColumns(rows)) {
                fewest = crossings;
                best = Optional.of(gutter);
            }
        }
        return best;
    }

    boolean isCrossedBy(PageRow row) {
        return row.pieces().stream().anyMatch(piece -> piece.left() < x && piece.right() > x);
    }

    boolean isLeft(Glyph glyph) {
        return (glyph.left() + glyph.right()) / 2 < x;
    }

    private boolean partsColumns(List<PageRow> rows) {
        List<PageRow> parted = rows.stream().filter(row -> !isCrossedBy(row)).toList();
        long left = parted.stream().filter(row -> isCounts(leftOf(row))).count();
        long right = parted.stream().filter(row -> isCounts(rightOf(row))).count();
        long both = parted.stream()
                .filter(row -> isCounts(leftOf(row)) && isCounts(rightOf(row)))
                .count();
        long goesOn = parted.stream().filter(this::goesOn).count();
        return left >= FEW_COUNTS && right >= FEW_COUNTS && goesOn * 2 <= both;
    }

    private List<Piece> leftOf(PageRow row) {
        return row.pieces().stream().filter(piece -> piece.right() <= x).toList();
    }

    private List<Piece> rightOf(PageRow row) {
        return row.pieces().stream().filter(piece -> piece.left() >= x).toList();
    }

    /** Counts with steps behind them: a column of numbers or of clock times belongs to the other one. */
    private static boolean isCounts(List<Piece> column) {
        return !column.isEmpty()
                && Cells.beginsWithCount(column.get(0).text())
                && column.stream().anyMatch(piece -> piece.text().chars().anyMatch(Character::isLetter));
    }

    private boolean goesOn(PageRow row) {
        if (!isCounts(leftOf(row)) || !isCounts(rightOf(row))) {
            return false;
        }
        Matcher before = RANGE.matcher(leftOf(row).get(0).text());
        Matcher after = RANGE.matcher(rightOf(row).get(0).text());
        if (!before.matches() || !after.matches()) {
            return false;
        }
        String last = before.group(2) == null ? before.group(1) : before.group(2);
        return number(after.group(1)) == number(last) + 1;
    }

    /** Longer numbers are no counts. */
    private static int number(String digits) {
        return digits.length() > 4 ? -2 : Integer.parseInt(digits);
    }
}
