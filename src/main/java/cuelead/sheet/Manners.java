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
            new NumberedSteps().then(new Lengths()),
            new NumberedSteps().then(new RunningTotals()),
            new SideBySide(),
            new Lengths(),
            new RunningTotals(),
            new ListNumbers().then(new Lengths()),
            new ListNumbers().then(new RunningTotals()),
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
        List<SheetLine> best = plain(lines);
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

    /** What is plain by itself, in the usual words. */
    private static List<SheetLine> plain(List<SheetLine> lines) {
        List<SheetLine> clocks = BareClocks.told(SpelledSections.parted(LetterTitle.first(CountsAbove.paired(
                Dictated.parted(ShortTerms.spelled(TornSentences.joined(TextTable.steps(ChatStamps.left(lines)))))))));
        SpokenCounts spoken = new SpokenCounts();
        List<SheetLine> figures = spoken.isPlain(clocks) ? spoken.usual(clocks) : clocks;
        List<SheetLine> counted = NumberedSteps.counted(
                NumberedRanges.bracketed(JoinedCounts.where(ListedCounts.joined(CountOpeners.left(figures)))));
        return new NamedParts().usual(PhrasedWords.usual(counted));
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
