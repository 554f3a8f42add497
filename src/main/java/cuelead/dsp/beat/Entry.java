package cuelead.dsp.beat;

/**
 * Where the singer or the band comes in after the intro, so that a dance is likely to begin there: of the phrases that begin
 * in the first minute the one whose beginning the music marks most (a fill before it, a crash on it, another sound after
 * it: {@link BarOdds#phrase}), with a liking for the usual intros of 16 and 32 counts, in waltz of 24 and 48 (common
 * practice).
 */
final class Entry {
    /** Two walls' worth: later than this no dance begins. */
    private static final int MOST_PHRASES = 8;

    /** As the logarithm of odds. */
    private static final double LIKING_OF_USUAL = 2;

    private Entry() {}

    /** The beat at which the dance is likely to begin; the first count 1 where no other comes. */
    static int find(PhraseSearch.Counts counts) {
        int first = Math.max(0, counts.counts().indexOf(1));
        int best = first;
        double bestScore = Double.NEGATIVE_INFINITY;
        int phrases = 0;
        for (int beat = first + 1; beat < counts.counts().size() && phrases < MOST_PHRASES; beat++) {
            if (counts.counts().get(beat) != 1) {
                continue;
            }
            phrases++;
            double usual = isUsual(beat - first, counts.phraseBeats()) ? LIKING_OF_USUAL : 0;
            double score = counts.odds().phrase(beat) + usual;
            if (score > bestScore) {
                best = beat;
                bestScore = score;
            }
        }
        return best;
    }

    private static boolean isUsual(int introCounts, int phraseBeats) {
        int phrases = introCounts / phraseBeats;
        return introCounts % phraseBeats == 0
                && (phraseBeats == 8 ? phrases == 2 || phrases == 4 : phrases == 4 || phrases == 8);
    }
}
