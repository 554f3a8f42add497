package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lines whose cells are parted by tabs, with spaces instead, so that the cells of a column stand below each other. */
final class TabStops {
    /** On a line with tabs, a few spaces are a tab that was lost. */
    private static final Pattern GAPS = Pattern.compile("\\t| {2,}");

    private static final int GAP = 2;
    /** Characters; a longer cell is no cell. */
    private static final int WIDEST = 200;

    private TabStops() {}

    /** The same lines where none has a tab. */
    static List<SheetLine> aligned(List<SheetLine> lines) {
        List<Integer> widths = new ArrayList<>();
        for (SheetLine line : lines) {
            String[] cells = line.text().indexOf('\t') < 0 ? new String[0] : GAPS.split(line.text(), -1);
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
        int from = 0;
        Matcher gap = GAPS.matcher(line.text());
        for (int column = 0; line.text().indexOf('\t') >= 0 && gap.find(from); column++) {
            start += widths.get(column);
            aligned = aligned.with(gap.start(), gap.end(), " ".repeat(Math.max(GAP, start - gap.start())));
            from = gap.start() + Math.max(GAP, start - gap.start());
            gap = GAPS.matcher(aligned.text());
        }
        return aligned;
    }
}
