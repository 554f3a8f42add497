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
    /** Outside of what is well supported, beats go on while most are within this part of the usual length ... */
    private static final double SAME_TEMPO = 0.08;

    /** How fast the usual length follows a slowing or quickening end. */
    private static final double FOLLOWING = 0.4;

    /** A beat that is heard, and is about as long as its neighbour, is kept; so the last beats may slow down. */
    private static final double LARGEST_STEP = 0.14;

    private static final double LEAST_KEPT = 0;

    private static final double MOST_AT_TEMPO = 0.65;
    /** ... and, over so many, are heard a little; a beat far off counts no less than this. */
    private static final int WINDOW_OUTSIDE = 16;

    private static final double LEAST_OUTSIDE = 2.5;
    private static final double LEAST_COUNTED = -8;
    /** A break or a bridge without support is bridged up to this length. */
    private static final double LONGEST_GAP_SECONDS = 35;
    /** A gap with the same tempo before and after it, as within one song, up to this length. */
    private static final double LONGEST_GAP_AT_ONE_TEMPO = 60;

    private static final double ONE_TEMPO = 0.06;
    /** Where the tempo is kept throughout, beats go on through soft music for so long: an intro or an ending is counted. */
    private static final double LONGEST_SOFT_SECONDS = 40;

    private static final double MOST_AT_ONE_TEMPO = 0.85;
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
        return Math.abs(length / usualLength(beats, end, -1) - 1) < ONE_TEMPO;
    }

    private static boolean isBridged(List<PathBeat> beats, int last, int next) {
        double gap = beats.get(next).seconds() - beats.get(last).seconds();
        double change = usualLength(beats, next, 1) / usualLength(beats, last, -1) - 1;
        return gap <= LONGEST_GAP_SECONDS || (gap <= LONGEST_GAP_AT_ONE_TEMPO && Math.abs(change) < ONE_TEMPO);
    }

    /** What is asked of beats as short as these, as a part. */
    private static double shortBeats(List<PathBeat> beats, int from, int last) {
        double seconds = beats.get(last).seconds() - beats.get(from).seconds();
        double part = seconds / Math.max(1, last - from) / FULL_SECONDS;
        return Math.max(LEAST_PART, Math.min(1, part));
    }

    private static boolean isEven(List<PathBeat> beats, int from, int last) {
        double middle = usualLength(beats, from, 1);
        int even = 0;
        for (int i = from; i <= last; i++) {
            even += isAt(middle, EVEN, beats.get(i)) ? 1 : 0;
        }
        return even >= MOST_EVEN * (last - from + 1);
    }

    /** Adds a part with all that goes on at its tempo before and after it, such as a soft intro. */
    private static void add(List<List<PathBeat>> parts, List<PathBeat> beats, int from, int to) {
        int earliest =
                parts.isEmpty() ? 0 : beats.indexOf(parts.get(parts.size() - 1).get(0));
        int first = reach(beats, from, earliest - 1, -1);
        int end = reach(beats, to - 1, beats.size(), 1) + 1;
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

    /** The last beat, going outwards, before tempo or support are lost. */
    private static int reach(List<PathBeat> beats, int start, int limit, int direction) {
        double usual = usualLength(beats, start, -direction);
        int reached = start;
        for (int i = start + direction; i != limit; i += direction) {
            double step =
                    beats.get(i).lengthSeconds() / beats.get(i - direction).lengthSeconds() - 1;
            boolean isKept = Math.abs(step) < LARGEST_STEP && beats.get(i).support() > LEAST_KEPT;
            boolean isNear = Math.abs(beats.get(i).seconds() - beats.get(start).seconds()) < LONGEST_SOFT_SECONDS;
            boolean isSoft = isNear && keepsTempo(beats, i, limit, direction, usual);
            if (!isKept && !isSoft && !goesOn(beats, i, limit, direction, usual)) {
                break;
            }
            reached = i;
            usual += isKept ? FOLLOWING * (beats.get(i).lengthSeconds() - usual) : 0;
        }
        return reached;
    }

    private static boolean isAt(double usual, double tolerance, PathBeat beat) {
        return Math.abs(beat.lengthSeconds() / usual - 1) < tolerance;
    }

    /** Whether nearly all of the next beats are at this tempo, heard or not. */
    private static boolean keepsTempo(List<PathBeat> beats, int start, int limit, int direction, double usual) {
        int count = 0;
        int kept = 0;
        for (int i = start; i != limit && count < WINDOW_OUTSIDE; i += direction) {
            count++;
            kept += isAt(usual, ONE_TEMPO, beats.get(i)) ? 1 : 0;
        }
        return kept >= MOST_AT_ONE_TEMPO * count;
    }

    /** Whether most of the next beats are at this tempo and are heard. */
    private static boolean goesOn(List<PathBeat> beats, int start, int limit, int direction, double usual) {
        int count = 0;
        int kept = 0;
        double support = 0;
        for (int i = start; i != limit && count < WINDOW_OUTSIDE; i += direction) {
            count++;
            kept += isAt(usual, SAME_TEMPO, beats.get(i)) ? 1 : 0;
            support += Math.max(LEAST_COUNTED, beats.get(i).support());
        }
        return kept >= MOST_AT_TEMPO * count && support >= LEAST_OUTSIDE * count;
    }

    /** The median length of the beats from one on. */
    private static double usualLength(List<PathBeat> beats, int start, int direction) {
        int other = Math.max(0, Math.min(beats.size() - 1, start + direction * WINDOW_BEATS));
        double[] lengths = beats.subList(Math.min(start, other), Math.max(start, other) + 1).stream()
                .mapToDouble(PathBeat::lengthSeconds)
                .sorted()
                .toArray();
        return lengths[lengths.length / 2];
    }
}
