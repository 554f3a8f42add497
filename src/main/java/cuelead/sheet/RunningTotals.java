package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** The count that each figure ends on, instead of its length: "vine R (4), vine L (8)", "12 rocking chair R". */
final class RunningTotals implements Manner {
    private static final int LONGEST_FIGURE = 16;

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        int last = 0;
        boolean found = false;
        for (SheetLine line : HeadedSteps.parted(lines)) {
            boolean words = !line.isBlank() && !OwnLines.isOwn(line) && isDanced(line);
            List<StatedLengths.Stated> ends = words ? StatedLengths.in(line.text()) : List.of();
            SheetLine counted = line;
            int by = 0;
            for (StatedLengths.Stated end : ends) {
                int first = end.counts() > last && end.counts() - last <= LONGEST_FIGURE ? last + 1 : 1;
                String counts = first == end.counts() ? " (" + first + ") " : " (" + first + "-" + end.counts() + ") ";
                counted = counted.with(end.from() + by, end.to() + by, counts);
                by += counts.length() - (end.to() - end.from());
                last = end.counts();
                found = true;
            }
            usual.add(counted);
        }
        return found ? usual : lines;
    }

    private static boolean isDanced(SheetLine line) {
        LineKind kind = LineKind.of(line);
        return (kind == LineKind.OTHER || kind == LineKind.COUNTS) && DanceLine.isDanced(line.text());
    }
}
