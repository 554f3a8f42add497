package cuelead.dsp.beat;

import java.util.List;

/**
 * How likely each beat is the first of a bar, and how likely a bar's first beat is the first of a phrase: two logistic
 * regressions on {@link Marks}. Their weights, {@link OddsTable}, were fitted on made songs whose bars and phrases are
 * known exactly.
 */
final class BarOdds {
    private final OddsTable table;
    private final Marks marks;
    /** Over how many beats a bar is compared with the next; bars of two go in pairs. */
    private final int barBeats;

    /** @param beatsPerBar 2, 3 or 4 */
    BarOdds(OddsTable table, Marks marks, int beatsPerBar) {
        this.table = table;
        this.marks = marks;
        this.barBeats = beatsPerBar == 2 ? 4 : beatsPerBar;
    }

    /** Logarithm of the odds that a beat is the first of its bar. */
    double bar(int beat) {
        return table.barConstant() + sum(table.bar(), beat);
    }

    /** Logarithm of the odds that a bar's first beat is the first of a phrase. */
    double phrase(int beat) {
        return table.phraseConstant() + sum(table.phrase(), beat);
    }

    private double sum(List<OddsTerm> terms, int beat) {
        double sum = 0;
        for (OddsTerm term : terms) {
            sum += term.weight() * term.value(marks, beat, barBeats);
        }
        return sum;
    }
}
