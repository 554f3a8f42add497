package cuelead.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A row of a page: pieces of text that stand on one line, parted by gaps as wide as those between columns.
 *
 * @param pieces   from left to right, at least one
 * @param indented whether it begins under a column that is not the first, as the second line of a cell does
 * @param baseline in points from the top of the page
 * @param size     the largest font's, in points
 */
record PageRow(List<Piece> pieces, boolean indented, double baseline, double size) {
    /** A gap that no space between words has, in font sizes. */
    private static final double COLUMN_GAP = 1.4;
    /** A gap as wide as three spaces, with which writers part what stands on one line. */
    private static final double WIDE_GAP = 0.75;
    /** The narrowest gap between words: half of what a usual space has. */
    private static final double WORD_GAP = 0.14;
    /** How far up and down letters of one row stand, in font sizes: fractions and marks of footnotes are raised. */
    private static final double RAISED = 0.45;

    PageRow {
        pieces = List.copyOf(pieces);
    }

    /** Text without a wide gap, with its edges in points. */
    record Piece(String text, double left, double right) {}

    /** The rows of letters that stand in one column, from top to bottom. */
    static List<PageRow> of(List<Glyph> glyphs) {
        List<Glyph> down = glyphs.stream()
                .filter(glyph -> !glyph.isSpace())
                .sorted(Comparator.comparingDouble(Glyph::baseline))
                .toList();
        List<Glyph> spaces = glyphs.stream().filter(Glyph::isSpace).toList();
        List<PageRow> rows = new ArrayList<>();
        List<Glyph> row = new ArrayList<>();
        for (Glyph glyph : down) {
            if (!row.isEmpty() && !isBeside(row.get(0), glyph)) {
                rows.add(row(row, spaces));
                row.clear();
            }
            row.add(glyph);
        }
        if (!row.isEmpty()) {
            rows.add(row(row, spaces));
        }
        return rows;
    }

    private static boolean isBeside(Glyph first, Glyph next) {
        return next.baseline() - first.baseline() < RAISED * Math.max(first.size(), next.size());
    }

    private static PageRow row(List<Glyph> letters, List<Glyph> spaces) {
        List<Glyph> right =
                letters.stream().sorted(Comparator.comparingDouble(Glyph::left)).toList();
        double size = letters.stream().mapToDouble(Glyph::size).max().orElse(1);
        double baseline = letters.stream().collect(Collectors.averagingDouble(Glyph::baseline));
        List<Glyph> between = spaces.stream()
                .filter(space -> Math.abs(space.baseline() - baseline) < RAISED * size)
                .toList();
        return new PageRow(pieces(right, between), false, baseline, size);
    }

    private static List<Piece> pieces(List<Glyph> letters, List<Glyph> spaces) {
        List<Piece> pieces = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        double left = letters.get(0).left();
        double end = left;
        for (Glyph letter : letters) {
            double gap = letter.left() - end;
            if (gap > COLUMN_GAP * letter.size()) {
                pieces.add(new Piece(text.toString(), left, end));
                text.setLength(0);
                left = letter.left();
            } else if (!text.isEmpty() && (gap > WORD_GAP * letter.size() || isSpaced(spaces, end, letter))) {
                text.append(gap > WIDE_GAP * letter.size() ? "   " : " ");
            }
            text.append(letter.text());
            end = Math.max(end, letter.right());
        }
        pieces.add(new Piece(text.toString(), left, end));
        return pieces;
    }

    /** Whether a space is written between two letters, however narrow it is. */
    private static boolean isSpaced(List<Glyph> spaces, double end, Glyph letter) {
        double slack = WORD_GAP * letter.size();
        return spaces.stream().anyMatch(space -> {
            double middle = (space.left() + space.right()) / 2;
            return middle > end - slack / 2 && middle < letter.left() + slack / 2 && space.left() < letter.left();
        });
    }

    double left() {
        return pieces.get(0).left();
    }

    PageRow asIndented() {
        return new PageRow(pieces, true, baseline, size);
    }

    /** Its pieces parted by tabs; a tab before them where it is indented. */
    String text() {
        String text = pieces.stream().map(Piece::text).collect(Collectors.joining("\t"));
        return indented ? "\t" + text : text;
    }
}
