package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lines whose cells are parted by tabs, with spaces instead, so that the cells of a column stand below each other. */
final class TabStops {
    private static final int GAP = 2;
    /** Characters; a longer cell is no cell. */
    private static final int WIDEST = 200;

    private TabStops() {}

    /** The same lines where none has a tab. */
    static List<SheetLine> aligned(List<SheetLine> lines) {
        List<Integer> widths = new ArrayList<>();
        for (SheetLine line : lines) {
            String[] cells = line.text().split("\t", -1);
            for (int i = 0; i + 1 < cells.length; i++) {
                int width = Math.min(WIDEST, cells[i].length() + GAP);
                if (i < widths.size()) {
                    widths.set(i, Math.max(widths.get(i), width));
                } else {
                    widths.add(width);
                }
            }
        }
        return widths.isEmpty()
                ? lines
                : lines.stream().map(line -> aligned(line, widths)).toList();
    }

    private static SheetLine aligned(SheetLine line, List<Integer> widths) {
        SheetLine aligned = line;
        int start = 0;
        for (int column = 0; aligned.text().indexOf('\t') >= 0; column++) {
            int tab = aligned.text().indexOf('\t');
            start += widths.get(column);
            aligned = aligned.with(tab, tab + 1, " ".repeat(Math.max(GAP, start - tab)));
        }
        return aligned;
    }
}
