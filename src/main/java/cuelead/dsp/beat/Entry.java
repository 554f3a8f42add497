package cuelead.dsp.beat;

import cuelead.dsp.beat.Marks.Mark;

/**
 * Where the singer or the band comes in after the intro, so that a dance is likely to begin there: of the phrases that begin
 * in the first minute the one before and after which the sound differs most (Foote 2000), with a liking for the usual
 * intros of 16 and 32 counts, in waltz of 24 and 48 (common practice).
 */
final class Entry {
    /** Two walls' worth: later than this no dance begins. */
    private static final int MOST_PHRASES = 9;

    private static final double LIKING_OF_USUAL = 2;

    private Entry() {}

    /** The beat at which the dance is likely to begin; the first count 1 where nothing stands out. */
    static int find(Marks marks, PhraseSearch.Counts counts) {
        int first = counts.counts().indexOf(1);
        int best = Math.max(0, first);
        double bestScore = Double.NEGATIVE_INFINITY;
        int phrases = 0;
        for (int beat = best; beat < marks.beats() && phrases < MOST_PHRASES; beat++) {
            if (counts.counts().get(beat) != 1) {
                continue;
            }
            double usual = isUsual(beat - first, counts.phraseBeats()) ? LIKING_OF_USUAL : 0;
            double score = marks.at(Mark.CHANGE_8, beat) + marks.at(Mark.CHANGE_16, beat) + usual;
            // the music's own beginning is the greatest change of all, and no entry
            if (phrases > 0 && score > bestScore) {
                best = beat;
                bestScore = score;
            }
            phrases++;
        }
        return best;
    }

    private static boolean isUsual(int introCounts, int phraseBeats) {
        int phrases = introCounts / phraseBeats;
        return introCounts % phraseBeats == 0
                && (phraseBeats == 8 ? phrases == 2 || phrases == 4 : phrases == 4 || phrases == 8);
    }
}
