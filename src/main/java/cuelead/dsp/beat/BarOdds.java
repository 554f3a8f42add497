package cuelead.dsp.beat;

import java.util.List;

/**
 * How likely each beat is the first of a bar, and how likely a bar's first beat is the first of a phrase: logarithms of odds
 * that are sums of {@link Marks}. Their weights, {@link OddsTable}, were fitted on made songs whose bars and phrases are
 * known exactly.
 */
final class BarOdds {
    private final double[] bar;
    private final double[] phrase;

    BarOdds(OddsTable table, Marks marks) {
        bar = new double[marks.beats()];
        phrase = new double[marks.beats()];
        for (int beat = 0; beat < bar.length; beat++) {
            bar[beat] = table.barConstant() + sum(table.bar(), marks, beat);
            phrase[beat] = table.phraseConstant() + sum(table.phrase(), marks, beat);
        }
    }

    private static double sum(List<OddsTerm> terms, Marks marks, int beat) {
        double sum = 0;
        for (OddsTerm term : terms) {
            sum += term.weight() * term.value(marks, beat);
        }
        return sum;
    }

    int beats() {
        return bar.length;
    }

    /** Logarithm of the odds that a beat is the first of its bar. */
    double bar(int beat) {
        return bar[beat];
    }

    /** Logarithm of the odds that a bar's first beat is the first of a phrase. */
    double phrase(int beat) {
        return phrase[beat];
    }
}
