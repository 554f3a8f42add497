package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Finds headings that stand without their brackets, "9-16 Rocking chair, side touches", and gives them brackets: the
 * line below begins at the same count and ends earlier, so that the upper one cannot be danced.
 */
final class BareHeadings {
    private static final int SHORTEST = 4;

    private BareHeadings() {}

    /** The same lines; those that are such headings with brackets round their counts. */
    static List<SheetLine> bracketed(List<SheetLine> lines) {
        Deque<SheetLine> read = new ArrayDeque<>();
        Optional<SheetLine> below = Optional.empty();
        for (int i = lines.size() - 1; i >= 0; i--) {
            SheetLine line = lines.get(i);
            boolean heading = below.isPresent() && isHeading(line, below.get());
            read.addFirst(heading ? withBrackets(line) : line);
            below = line.isBlank() ? below : Optional.of(line);
        }
        return List.copyOf(read);
    }

    private static boolean isHeading(SheetLine line, SheetLine below) {
        if (SectionHead.read(line.text()).isPresent()) {
            return false;
        }
        Optional<CountGroup> upper = CountGroup.read(line.text());
        Optional<CountGroup> lower = CountGroup.read(below.text());
        return upper.isPresent()
                && lower.isPresent()
                && isRange(upper.get())
                && contains(upper.get(), lower.get(), below.number() - line.number())
                && !line.text().substring(upper.get().end()).isBlank();
    }

    private static boolean isRange(CountGroup group) {
        return group.counts().size() >= SHORTEST && group.counts().stream().allMatch(Count::isWhole);
    }

    /** Counts that begin at 1 begin anew in every section, so only the very next line tells. */
    private static boolean contains(CountGroup upper, CountGroup lower, int linesBelow) {
        int first = upper.counts().get(0).number();
        boolean shorter = last(lower) < last(upper);
        return lower.counts().get(0).equals(upper.counts().get(0)) && shorter && (first > 1 || linesBelow == 1);
    }

    private static int last(CountGroup group) {
        return group.counts().get(group.counts().size() - 1).number();
    }

    private static SheetLine withBrackets(SheetLine line) {
        CountGroup group = CountGroup.read(line.text()).orElseThrow();
        int first = group.counts().get(0).number();
        return new SheetLine(
                line.number(),
                "[" + first + "-" + last(group) + "] "
                        + line.text().substring(group.end()).strip());
    }
}
