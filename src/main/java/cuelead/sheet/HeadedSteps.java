package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A section's head on the line of its first steps: "S1: 1-2 Rock R, recover L. 3&amp;4 ...", "Part A - 1-4 Vine right",
 * "[1-8] vine R (1-4), vine L (5-8)".
 */
final class HeadedSteps {
    private HeadedSteps() {}

    /** The same lines, heads and steps on lines of their own. */
    static List<SheetLine> parted(List<SheetLine> lines) {
        List<SheetLine> parted = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int steps = steps(lines, i);
            if (steps > 0) {
                parted.add(lines.get(i).part(0, steps));
                parted.add(lines.get(i).part(steps, lines.get(i).text().length()));
            } else {
                parted.add(lines.get(i));
            }
        }
        return parted;
    }

    /** 0-based index where the steps, or their counts, begin; 0 where none stand on this line. */
    private static int steps(List<SheetLine> lines, int i) {
        SheetLine line = lines.get(i);
        boolean section = !line.isBlank() && LineKind.of(line) == LineKind.SECTION;
        Optional<SectionHead> head = section ? SectionHead.read(line.text()) : Optional.empty();
        String words = head.map(SectionHead::heading).orElse("");
        int from = words.isEmpty() ? 0 : line.text().lastIndexOf(words);
        return from > 0 && isDanced(words, head.get(), lines, i) ? from : 0;
    }

    private static boolean isDanced(String words, SectionHead head, List<SheetLine> lines, int i) {
        List<CountPlaces.Counted> counted = CountPlaces.of(words, Math.max(0, head.first() - 1));
        if (CountGroup.read(words).isPresent() && !counted.isEmpty()) {
            return fits(words, counted.get(0), lines.get(i).fit())
                    && (counted.size() > 1 || !isDetailed(counted.get(0).group(), lines, i));
        }
        if (!counted.isEmpty()) {
            return mostFit(words, counted, lines.get(i).fit())
                    && !isDetailed(counted.get(0).group(), lines, i);
        }
        return !StatedLengths.in(words).isEmpty() && DanceLine.isDanced(words) && !isAbove(lines, i);
    }

    private static boolean mostFit(String words, List<CountPlaces.Counted> counted, LineFit fit) {
        long fitting = counted.stream().filter(each -> fits(words, each, fit)).count();
        return fitting * 2 > counted.size();
    }

    private static boolean fits(String words, CountPlaces.Counted counted, LineFit fit) {
        return fit.fits(counted.group().written(words) + " " + words.substring(counted.from(), counted.to()));
    }

    /** "S1: 1-8 Vines" above "1-4 Step R ..." is all heading. */
    private static boolean isDetailed(CountGroup group, List<SheetLine> lines, int i) {
        return below(lines, i)
                .filter(line -> SectionHead.read(line.text())
                        .filter(head -> !head.isBareRange())
                        .isEmpty())
                .map(line -> line.counted(0))
                .filter(below -> !below.isEmpty()
                        && below.get(0).group().counts().get(0).number()
                                <= group.counts().get(0).number())
                .isPresent();
    }

    /** Whether steps with counts or lengths of their own stand below. */
    private static boolean isAbove(List<SheetLine> lines, int i) {
        return below(lines, i)
                .filter(line -> LineKind.of(line) == LineKind.COUNTS
                        || (LineKind.of(line) == LineKind.OTHER && line.isDanced()))
                .isPresent();
    }

    private static Optional<SheetLine> below(List<SheetLine> lines, int i) {
        return lines.stream().skip(i + 1L).filter(line -> !line.isBlank()).findFirst();
    }
}
