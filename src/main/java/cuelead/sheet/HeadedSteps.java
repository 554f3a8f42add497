package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A section's head on the line of its first steps: "S1: 1-2 Rock R, recover L. 3&amp;4 ...", "Part A - 1-4 Vine right". */
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

    /** 0-based index where the counts of the steps begin; 0 where none stand on this line. */
    private static int steps(List<SheetLine> lines, int i) {
        SheetLine line = lines.get(i);
        boolean section = !line.isBlank() && LineKind.of(line) == LineKind.SECTION;
        Optional<SectionHead> head = section ? SectionHead.read(line.text()) : Optional.empty();
        String words = head.map(SectionHead::heading).orElse("");
        List<CountPlaces.Counted> counted = CountPlaces.of(words, 0);
        int from = line.text().lastIndexOf(words);
        boolean first = !counted.isEmpty() && CountGroup.read(words).isPresent();
        if (!first || from <= 0 || !fits(words, counted.get(0))) {
            return 0;
        }
        return counted.size() > 1 || !isDetailed(counted.get(0), lines, i) ? from : 0;
    }

    private static boolean fits(String words, CountPlaces.Counted counted) {
        return LineFit.fits(counted.group().written(words) + " " + words.substring(counted.from(), counted.to()));
    }

    /** "S1: 1-8 Vines" above "1-4 Step R ..." is all heading. */
    private static boolean isDetailed(CountPlaces.Counted counted, List<SheetLine> lines, int i) {
        return lines.stream()
                .skip(i + 1L)
                .filter(line -> !line.isBlank())
                .findFirst()
                .flatMap(line -> CountGroup.read(line.text()))
                .filter(below -> below.counts().get(0).number()
                        <= counted.group().counts().get(0).number())
                .isPresent();
    }
}
