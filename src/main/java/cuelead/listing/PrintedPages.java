package cuelead.listing;

import java.util.ArrayList;
import java.util.List;

/** Lays blocks of rows on pages: a block is parted only where it is longer than a page, a row never. */
final class PrintedPages {
    /** Between two blocks, in points. */
    static final double GAP_POINTS = 14;

    private final double heightPoints;
    private final List<List<Placed>> pages = new ArrayList<>();
    private double top;

    private PrintedPages(double heightPoints) {
        this.heightPoints = heightPoints;
        turn();
    }

    /** A row, and how far its top is below that of the page's text, in points. */
    record Placed(double topPoints, PrintedRow row) {}

    /**
     * The rows of each page, at least one.
     *
     * @param blocks       of rows, from top to bottom
     * @param heightPoints of the text of a page
     */
    static List<List<Placed>> of(List<List<PrintedRow>> blocks, double heightPoints) {
        PrintedPages pages = new PrintedPages(heightPoints);
        blocks.forEach(pages::add);
        return pages.pages;
    }

    private void turn() {
        pages.add(new ArrayList<>());
        top = 0;
    }

    private List<Placed> page() {
        return pages.get(pages.size() - 1);
    }

    private void add(List<PrintedRow> block) {
        double height = heightOf(block);
        double gap = page().isEmpty() ? 0 : GAP_POINTS;
        boolean fitsHere = top + gap + height <= heightPoints;
        if (!fitsHere && height <= heightPoints && !page().isEmpty()) {
            turn();
            gap = 0;
        }
        top += gap;
        int from = 0;
        while (from < block.size()) {
            int to = from + 1;
            while (to < block.size() && block.get(to - 1).keepsNext()) {
                to++;
            }
            place(block.subList(from, to));
            from = to;
        }
    }

    /** Rows that stay together. */
    private void place(List<PrintedRow> rows) {
        if (top + heightOf(rows) > heightPoints && !page().isEmpty()) {
            turn();
        }
        for (PrintedRow row : rows) {
            page().add(new Placed(top, row));
            top += row.heightPoints();
        }
    }

    private static double heightOf(List<PrintedRow> rows) {
        return rows.stream().mapToDouble(PrintedRow::heightPoints).sum();
    }
}
