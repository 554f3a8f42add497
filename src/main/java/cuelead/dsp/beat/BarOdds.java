package cuelead.dsp.beat;

import cuelead.dsp.beat.Marks.Mark;

/**
 * How likely each beat is the first of a bar, and how likely a bar's first beat is the first of a phrase: two logistic
 * regressions on {@link Marks}. Their weights were fitted on 43 made songs of 20 styles whose bars and phrases are known
 * exactly (ridge 1, on beats that the search had found); the songs that the program is measured with are not among them.
 */
final class BarOdds {
    private static final int CHANGE_NEIGHBOURS = 3;

    private final Marks marks;
    /** Over how many beats a bar is compared with the next; bars of two go in pairs. */
    private final int barBeats;

    /** @param beatsPerBar 2, 3 or 4 */
    BarOdds(Marks marks, int beatsPerBar) {
        this.marks = marks;
        this.barBeats = beatsPerBar == 2 ? 4 : beatsPerBar;
    }

    /** Logarithm of the odds that a beat is the first of its bar. */
    double bar(int beat) {
        return -1.56
                + 2.35 * marks.at(Mark.DOWNBEAT, beat)
                + 0.21 * marks.at(Mark.CHORD, beat)
                + 0.24 * marks.at(Mark.CHORD_OF_TWO, beat)
                + 1.16 * marks.peak(Mark.CHANGE_4, beat, 1)
                + 0.09 * marks.at(Mark.BASS, beat);
    }

    /** Logarithm of the odds that a bar's first beat is the first of a phrase. */
    double phrase(int beat) {
        return 0.24
                + 0.45 * marks.peak(Mark.CHANGE_4, beat, CHANGE_NEIGHBOURS)
                + 0.05 * marks.peak(Mark.CHANGE_8, beat, CHANGE_NEIGHBOURS)
                + 0.22 * marks.peak(Mark.CHANGE_16, beat, CHANGE_NEIGHBOURS)
                + 0.23 * marks.peak(Mark.NOTES_16, beat, CHANGE_NEIGHBOURS)
                + 0.36 * marks.overNextBars(Mark.CRASH, beat, barBeats)
                + 0.24 * marks.overNextBars(Mark.DOWNBEAT, beat, barBeats)
                + 0.15 * marks.overNextBars(Mark.CHANGE_4, beat, barBeats)
                + 0.03 * marks.overNextBars(Mark.CHORD_OF_TWO, beat, barBeats)
                + 0.05 * marks.overNextBars(Mark.FILL, beat, barBeats);
    }
}
