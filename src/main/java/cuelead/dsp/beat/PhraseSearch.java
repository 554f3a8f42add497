package cuelead.dsp.beat;

import cuelead.dsp.beat.OddsTable.Break;
import java.util.List;

/**
 * Counts a song's beats through its bars and phrases: eights, in bars of three sixes. The most likely count of every beat is
 * found over the whole song (Viterbi 1967); a phrase may end early, after an odd bar or a tag of two beats, where the music
 * speaks for it strongly enough. As bar tracking with a hidden Markov model over beats (Papadopoulos and Peeters 2011,
 * "Joint estimation of chords and downbeats from an audio signal", section IV), one level higher.
 */
final class PhraseSearch {
    private final OddsTable table;
    private final BarOdds odds;
    private final int beatsPerBar;
    private final int phraseBeats;
    private final int beats;

    /**
     * The counts that were found.
     *
     * @param beatsPerBar   2, 3 or 4
     * @param phraseBeats   8 or 6
     * @param logLikelihood of all of them together
     * @param counts        by beat; 1 = first of its phrase
     */
    record Counts(int beatsPerBar, int phraseBeats, double logLikelihood, List<Integer> counts) {}

    private PhraseSearch(OddsTable table, Marks marks, int beatsPerBar) {
        this.table = table;
        this.odds = new BarOdds(table, marks, beatsPerBar);
        this.beatsPerBar = beatsPerBar;
        this.phraseBeats = beatsPerBar == 3 ? 6 : 8;
        this.beats = marks.beats();
    }

    /** The likeliest counts in bars of two, three or four. */
    static Counts search(Marks marks, OddsTable table) {
        Counts two = new PhraseSearch(table, marks, 2).run();
        Counts three = new PhraseSearch(table, marks, 3).run();
        Counts four = new PhraseSearch(table, marks, 4).run();
        boolean isFour = four.logLikelihood() - two.logLikelihood() > table.fourOverTwo() * marks.beats();
        Counts even = isFour ? four : two;
        return three.logLikelihood() > Math.max(two.logLikelihood(), four.logLikelihood()) ? three : even;
    }

    private Counts run() {
        int[][] before = new int[beats][phraseBeats];
        double[] best = new double[phraseBeats];
        for (int place = 0; place < phraseBeats; place++) {
            best[place] = fit(0, place);
        }
        for (int beat = 1; beat < beats; beat++) {
            double[] next = new double[phraseBeats];
            for (int place = 0; place < phraseBeats; place++) {
                int from = place == 0 ? bestEnd(best) : place - 1;
                before[beat][place] = from;
                next[place] = best[from] - (place == 0 ? cost(from) : 0) + fit(beat, place);
            }
            best = next;
        }
        return traceBack(before, best);
    }

    private int bestEnd(double[] best) {
        int end = 0;
        for (int place = 1; place < phraseBeats; place++) {
            end = best[place] - cost(place) > best[end] - cost(end) ? place : end;
        }
        return end;
    }

    /** What it costs that a phrase's last beat is at this place. */
    private double cost(int place) {
        int counted = place + 1;
        if (counted == phraseBeats) {
            return 0;
        }
        if (counted % beatsPerBar == 0) {
            return table.costs().get(Break.AFTER_A_BAR);
        }
        return table.costs().get(counted % 2 == 0 ? Break.AFTER_HALF_A_BAR : Break.ELSEWHERE);
    }

    /** How well a beat fits a place in the phrase. */
    private double fit(int beat, int place) {
        double bar = odds.bar(beat);
        if (place % beatsPerBar != 0) {
            return logLogistic(-bar);
        }
        double phrase = odds.phrase(beat);
        return logLogistic(bar) + logLogistic(place == 0 ? phrase : -phrase);
    }

    private static double logLogistic(double odds) {
        return odds > 0 ? -Math.log1p(Math.exp(-odds)) : odds - Math.log1p(Math.exp(odds));
    }

    private Counts traceBack(int[][] before, double[] best) {
        int place = 0;
        for (int other = 1; other < phraseBeats; other++) {
            place = best[other] > best[place] ? other : place;
        }
        double likelihood = best[place];
        Integer[] counts = new Integer[beats];
        for (int beat = beats - 1; beat >= 0; beat--) {
            counts[beat] = place + 1;
            place = before[beat][place];
        }
        return new Counts(beatsPerBar, phraseBeats, likelihood, List.of(counts));
    }
}
