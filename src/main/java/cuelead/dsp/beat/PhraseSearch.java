package cuelead.dsp.beat;

import cuelead.dsp.beat.OddsTable.Break;
import cuelead.dsp.beat.OddsTable.Start;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Counts a song's beats through its bars and phrases: eights, in bars of three sixes. The most likely count of every beat is
 * found over the whole song (Viterbi 1967); it begins with a phrase or a pickup, and a phrase may end early, after an odd bar
 * or a tag of two beats, unless the music speaks for something else strongly enough. As bar tracking with a hidden Markov model over beats (Papadopoulos and Peeters 2011,
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
     * @param logLikelihood of all of them together, and of such bars
     * @param odds          of bars and phrases
     * @param counts        by beat; 1 = first of its phrase
     */
    record Counts(int beatsPerBar, int phraseBeats, double logLikelihood, BarOdds odds, List<Integer> counts) {}

    private PhraseSearch(OddsTable table, BarOdds odds, int beatsPerBar) {
        this.table = table;
        this.odds = odds;
        this.beatsPerBar = beatsPerBar;
        this.phraseBeats = beatsPerBar == 3 ? 6 : 8;
        this.beats = odds.beats();
    }

    /** The likeliest counts in bars of two, three or four. */
    static Counts search(HeardBeats heard, OddsTable table) {
        BarOdds inFours = new BarOdds(table, new Marks(heard, 4));
        BarOdds inThrees = new BarOdds(table, new Marks(heard, 3));
        return Stream.of(
                        new PhraseSearch(table, inFours, 2),
                        new PhraseSearch(table, inThrees, 3),
                        new PhraseSearch(table, inFours, 4))
                .map(PhraseSearch::run)
                .max(Comparator.comparingDouble(Counts::logLikelihood))
                .orElseThrow();
    }

    private Counts run() {
        int[][] before = new int[beats][phraseBeats];
        double[] best = new double[phraseBeats];
        for (int place = 0; place < phraseBeats; place++) {
            best[place] = fit(0, place) - startCost(place);
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

    /**
     * What it costs that a song begins at this place: most begin with a phrase, many with up to three beats before it, and
     * hardly any half-way through it.
     */
    private double startCost(int place) {
        if (place == 0) {
            return 0;
        }
        int lastBar = phraseBeats == 8 ? 4 : 3;
        return table.starts().get(place > phraseBeats - lastBar ? Start.PICKUP : Start.ELSEWHERE);
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
        double likelihood = best[place] + beats * table.metres().get(beatsPerBar);
        Integer[] counts = new Integer[beats];
        for (int beat = beats - 1; beat >= 0; beat--) {
            counts[beat] = place + 1;
            place = before[beat][place];
        }
        return new Counts(beatsPerBar, phraseBeats, likelihood, odds, List.of(counts));
    }
}
