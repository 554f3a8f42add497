package cuelead.document;

import java.util.ArrayList;
import java.util.List;

/** The rows of a page in the order in which they are read: two columns of counts one after the other. */
final class PageLayout {
    private static final double SAME_EDGE_POINTS = 2.5;
    /** So many rows above a row may be of the same table. */
    private static final int ROWS_OF_A_CELL = 8;

    private PageLayout() {}

    static List<PageRow> rows(List<Glyph> glyphs) {
        List<PageRow> across = PageRow.of(glyphs);
        return Gutter.of(across)
                .map(gutter -> byColumns(glyphs, across, gutter))
                .orElseGet(() -> indented(across));
    }

    /** Between rows that cross the gutter, the left column comes before the right one. */
    private static List<PageRow> byColumns(List<Glyph> glyphs, List<PageRow> across, Gutter gutter) {
        List<PageRow> rows = new ArrayList<>();
        double from = Double.NEGATIVE_INFINITY;
        for (PageRow row : across) {
            if (gutter.isCrossedBy(row)) {
                rows.addAll(band(glyphs, from, row.baseline() - row.size() / 2, gutter));
                rows.add(row);
                from = row.baseline() + row.size() / 2;
            }
        }
        rows.addAll(band(glyphs, from, Double.POSITIVE_INFINITY, gutter));
        return rows;
    }

    private static List<PageRow> band(List<Glyph> glyphs, double from, double to, Gutter gutter) {
        List<Glyph> inside = glyphs.stream()
                .filter(glyph -> glyph.baseline() > from && glyph.baseline() < to)
                .toList();
        List<PageRow> rows = new ArrayList<>();
        rows.addAll(indented(
                PageRow.of(inside.stream().filter(glyph -> gutter.isLeft(glyph)).toList())));
        rows.addAll(indented(PageRow.of(
                inside.stream().filter(glyph -> !gutter.isLeft(glyph)).toList())));
        return rows;
    }

    /** Rows that begin where a later column of a row above them begins are marked. */
    private static List<PageRow> indented(List<PageRow> rows) {
        List<PageRow> marked = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            PageRow row = rows.get(i);
            boolean continues = rows.subList(Math.max(0, i - ROWS_OF_A_CELL), i).stream()
                    .anyMatch(above -> above.pieces().stream()
                            .skip(1)
                            .anyMatch(piece -> Math.abs(piece.left() - row.left()) < SAME_EDGE_POINTS));
            marked.add(continues ? row.asIndented() : row);
        }
        return marked;
    }
}
