package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** The count that each figure ends on, instead of its length: "vine R (4), vine L (8)", "12 rocking chair R". */
final class RunningTotals implements Manner {
    private static final int LONGEST_FIGURE = 16;

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        Run run = new Run();
        boolean found = false;
        for (SheetLine line : HeadedSteps.parted(lines)) {
            boolean words = !line.isBlank() && !OwnLines.isOwn(line) && DanceLine.isOfSteps(line);
            List<StatedLengths.Stated> ends = words ? StatedLengths.in(line.text()) : List.of();
            usual.add(StatedLengths.replaced(line, ends, run::upTo));
            found |= !ends.isEmpty();
        }
        return found ? usual : lines;
    }

    private static final class Run {
        private int last;

        /** In brackets, the counts of a figure that ends on this one. */
        String upTo(int end) {
            int first = end > last && end - last <= LONGEST_FIGURE ? last + 1 : 1;
            last = end;
            return first == end ? " (" + first + ") " : " (" + first + "-" + end + ") ";
        }
    }
}
