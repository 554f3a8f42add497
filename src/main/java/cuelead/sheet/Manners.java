package cuelead.sheet;

import java.util.List;

/**
 * Chooses the manners in which a sheet is written: each is tried on the whole sheet and kept only where the sheet then
 * makes far more sense, so that a mistake of the author's is told and not explained away.
 */
final class Manners {
    private static final List<Manner> TRIED = List.of(
            new SpokenCounts(),
            new DigitRuns(),
            new SideBySide(),
            new Lengths(),
            new ListNumbers().then(new Lengths()),
            new Paragraphs(),
            new Paragraphs().then(new Lengths()));
    private static final int LONGEST_LINE = 2000;
    /** Two or three lines that do not fit are mistakes. */
    private static final int LEAST_GAIN = 14;

    private Manners() {}

    static SheetLayout.Laid chosen(List<SheetLine> lines) {
        if (lines.stream().anyMatch(line -> line.text().length() > LONGEST_LINE)) {
            return SheetLayout.laid(lines);
        }
        List<SheetLine> best = new NamedParts().usual(lines);
        SheetLayout.Laid laid = SheetLayout.laid(best);
        int cost = LayoutFit.cost(laid);
        for (Manner manner : TRIED) {
            List<SheetLine> usual = cost < LEAST_GAIN ? best : manner.usual(best);
            if (!usual.equals(best)) {
                SheetLayout.Laid other = SheetLayout.laid(usual);
                int otherCost = LayoutFit.cost(other);
                if (otherCost * 2 <= cost && cost - otherCost >= LEAST_GAIN) {
                    best = usual;
                    laid = other;
                    cost = otherCost;
                }
            }
        }
        return laid;
    }
}
