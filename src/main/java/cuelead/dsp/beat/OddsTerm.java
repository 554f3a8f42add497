package cuelead.dsp.beat;

import cuelead.dsp.beat.Marks.Mark;

/**
 * One term of a regression: a mark, seen alone or against others, and what it weighs.
 *
 * @param weight as the logarithm of odds for each standard deviation of the mark
 */
record OddsTerm(Mark mark, View view, double weight) {
    /** How a mark is looked at. */
    enum View {
        /** As it is. */
        AT,
        /** Over the beats next to it. */
        PEAK,
        /** Over the same beat of the bars before and after. */
        BARS
    }

    /** The mark of a beat in its view. */
    double value(Marks marks, int beat) {
        return switch (view) {
            case AT -> marks.at(mark, beat);
            case PEAK -> marks.overNeighbours(mark, beat);
            case BARS -> marks.overNextBars(mark, beat);
        };
    }
}
