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
            new NumberedHeadings(),
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
        SpokenCounts spoken = new SpokenCounts();
        List<SheetLine> paired = AndCounts.usual(lines);
        List<SheetLine> figures = spoken.isPlain(paired) ? spoken.usual(paired) : paired;
        List<SheetLine> best = new NamedParts().usual(PhrasedWords.usual(JoinedCounts.where(figures)));
        Chosen chosen = new Chosen(best);
        int cost = chosen.cost;
        for (Manner manner : TRIED) {
            if (chosen.cost >= LEAST_GAIN) {
                boolean changed = !chosen.lines.equals(best);
                chosen.consider(manner.usual(chosen.lines), chosen.cost);
                if (changed) {
                    chosen.consider(manner.usual(best), cost);
                }
            }
        }
        return chosen.laid;
    }

    /** What makes most sense so far. */
    private static final class Chosen {
        private List<SheetLine> lines;
        private SheetLayout.Laid laid;
        private int cost;

        Chosen(List<SheetLine> lines) {
            this.lines = lines;
            this.laid = SheetLayout.laid(lines);
            this.cost = LayoutFit.cost(laid);
        }

        /** Takes these lines where they make far more sense than what costs so much. */
        void consider(List<SheetLine> usual, int than) {
            if (usual.equals(lines)) {
                return;
            }
            Chosen other = new Chosen(usual);
            if (other.cost < cost && other.cost * 2 <= than && than - other.cost >= LEAST_GAIN) {
                lines = usual;
                laid = other.laid;
                cost = other.cost;
            }
        }
    }
}
