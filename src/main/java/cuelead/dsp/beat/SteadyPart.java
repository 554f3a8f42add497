package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;

/**
 * The part of a row of beats in which there is a beat at all. In noise and speech, too, the search finds the best row that
 * there is; what tells it from music is how much its beats are supported over a dozen seconds.
 */
final class SteadyPart {
    /** Beats over which the support is averaged. */
    private static final int WINDOW_BEATS = 24;
    /** Means in noise and speech stay below 6, in music above 8 (measured on made songs under hall noise). */
    private static final double LEAST_SUPPORT = 6.8;
    /**
     * As much is enough where the tempo is even, which that of noise is not: in 42 recordings of noise, talk, applause, stray
     * tones and stray drum strokes, 70 to 100 s each, no such stretch had a mean above 1.8.
     */
    private static final double LEAST_EVEN_SUPPORT = 4;
    /** The tempo is even where so many of the beats are within this part of their middle length. */
    private static final double MOST_EVEN = 0.9;

    private static final double EVEN = 0.04;
    /** Shorter beats have less room to be supported in: below this length as much less is asked ... */
    private static final double FULL_SECONDS = 0.4;
    /** ... but no less than this part. */
    private static final double LEAST_PART = 0.8;
    /**
     * Where a part has begun, so much of that support is enough for it to go on at its tempo (two thresholds, as Canny 1986,
     * "A computational approach to edge detection", follows edges).
     */
    private static final double ENOUGH_TO_GO_ON = 0.65;
    /** The part begins and ends with a beat that is heard. */
    private static final double LEAST_AT_ENDS = 3;
    /** A break or a bridge without support is bridged up to this length. */
    private static final double LONGEST_GAP_SECONDS = 35;
    /** A gap with the same tempo before and after it, as within one song, up to this length. */
    private static final double LONGEST_GAP_AT_ONE_TEMPO = 60;

    /** A beat is no more than a few seconds' worth of music when there are fewer. */
    private static final int LEAST_BEATS = 8;

    /** What is asked of the beats from one to another, those included. */
    private interface LeastSupport {
        double of(int from, int last);
    }

    private SteadyPart() {}

    /** The longest steady part, in beats; empty when there is none. */
    static List<PathBeat> longest(List<PathBeat> beats) {
        List<PathBeat> longest = List.of();
        for (List<PathBeat> part : parts(beats)) {
            if (part.size() > longest.size()) {
                longest = part;
            }
        }
        return longest;
    }

    /** All steady parts, in order; where nothing is heard well, those whose tempo at least is even. */
    static List<List<PathBeat>> parts(List<PathBeat> beats) {
        List<List<PathBeat>> heardWell = parts(beats, (from, last) -> LEAST_SUPPORT);
        return heardWell.isEmpty()
                ? parts(beats, (from, last) -> isEven(beats, from, last) ? LEAST_EVEN_SUPPORT : LEAST_SUPPORT)
                : heardWell;
    }

    private static List<List<PathBeat>> parts(List<PathBeat> beats, LeastSupport least) {
        List<List<PathBeat>> parts = new ArrayList<>();
        int window = Math.min(WINDOW_BEATS, beats.size());
        int first = -1;
        int end = -1;
        double sum = 0;
        for (int i = 0; i < beats.size(); i++) {
            sum += beats.get(i).support() - (i >= window ? beats.get(i - window).support() : 0);
            int from = i - window + 1;
            if (from < 0) {
                continue;
            }
            boolean goesOn = end > 0 && isAtTempoOf(beats, end - 1, from, i);
            if (sum < least.of(from, i) * shortBeats(beats, from, i) * window * (goesOn ? ENOUGH_TO_GO_ON : 1)) {
                continue;
            }
            if (first < 0) {
                first = from;
            } else if (from > end && !isBridged(beats, end - 1, from)) {
                add(parts, beats, first, end);
                first = from;
            }
            end = i + 1;
        }
        if (first >= 0) {
            add(parts, beats, first, end);
        }
        return parts;
    }

    /** Whether the beats from one to another are at the tempo of those before {@code end}. */
    private static boolean isAtTempoOf(List<PathBeat> beats, int end, int from, int to) {
        double length = (beats.get(to).seconds() - beats.get(from).seconds()) / Math.max(1, to - from);
        return Math.abs(length / PartReach.usualLength(beats, end, -1) - 1) < PartReach.ONE_TEMPO;
    }

    private static boolean isBridged(List<PathBeat> beats, int last, int next) {
        double gap = beats.get(next).seconds() - beats.get(last).seconds();
        double change = PartReach.usualLength(beats, next, 1) / PartReach.usualLength(beats, last, -1) - 1;
        return gap <= LONGEST_GAP_SECONDS
                || (gap <= LONGEST_GAP_AT_ONE_TEMPO && Math.abs(change) < PartReach.ONE_TEMPO);
    }

    /** What is asked of beats as short as these, as a part. */
    private static double shortBeats(List<PathBeat> beats, int from, int last) {
        double seconds = beats.get(last).seconds() - beats.get(from).seconds();
        double part = seconds / Math.max(1, last - from) / FULL_SECONDS;
        return Math.max(LEAST_PART, Math.min(1, part));
    }

    private static boolean isEven(List<PathBeat> beats, int from, int last) {
        double middle = PartReach.usualLength(beats, from, 1);
        int even = 0;
        for (int i = from; i <= last; i++) {
            even += PartReach.isAt(middle, EVEN, beats.get(i)) ? 1 : 0;
        }
        return even >= MOST_EVEN * (last - from + 1);
    }

    /** Adds a part with all that goes on at its tempo before and after it, such as a soft intro. */
    private static void add(List<List<PathBeat>> parts, List<PathBeat> beats, int from, int to) {
        int earliest =
                parts.isEmpty() ? 0 : beats.indexOf(parts.get(parts.size() - 1).get(0));
        int first = new PartReach(beats, from, earliest - 1, -1).last();
        int end = new PartReach(beats, to - 1, beats.size(), 1).last() + 1;
        while (first < end && beats.get(first).support() < LEAST_AT_ENDS) {
            first++;
        }
        while (end > first && beats.get(end - 1).support() < LEAST_AT_ENDS) {
            end--;
        }
        if (end - first >= LEAST_BEATS) {
            parts.add(beats.subList(first, end));
        }
    }
}
