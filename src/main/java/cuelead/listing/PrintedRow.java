package cuelead.listing;

import java.util.List;

/**
 * What is never cut by the end of a page: a line, or several that belong together.
 *
 * @param heightPoints of the row
 * @param keepsNext    whether the next row of its block is to be on the same page
 */
record PrintedRow(List<Words> words, double heightPoints, boolean keepsNext) {
    PrintedRow {
        words = List.copyOf(words);
    }

    /**
     * Words in the row.
     *
     * @param xPoints    from the left margin
     * @param basePoints from the top of the row to the line on which the letters stand
     */
    record Words(double xPoints, double basePoints, String text, double sizePoints, Letters.Face face) {}
}
