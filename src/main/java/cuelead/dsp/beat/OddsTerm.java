package cuelead.dsp.beat;

import cuelead.dsp.beat.Marks.Mark;

/**
 * One term of a regression: a mark, seen alone or against its neighbours, and what it weighs.
 *
 * @param weight as the logarithm of odds for each standard deviation of the mark
 */
record OddsTerm(Mark mark, View view, double weight) {
    private static final int CHANGE_NEIGHBOURS = 3;

    /** How a mark is looked at. */
    enum View {
        /** As it is. */
        AT,
        /** Over the beats next to it. */
        PEAK,
        /** Over the three beats on either side. */
        SUMMIT,
        /** Over the bars before and after. */
        BARS
    }

    /** The mark of a beat in its view. */
    double value(Marks marks, int beat, int barBeats) {
        return switch (view) {
            case AT -> marks.at(mark, beat);
            case PEAK -> marks.peak(mark, beat, 1);
            case SUMMIT -> marks.peak(mark, beat, CHANGE_NEIGHBOURS);
            case BARS -> marks.overNextBars(mark, beat, barBeats);
        };
    }
}
