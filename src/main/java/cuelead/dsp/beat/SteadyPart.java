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
    /** The part begins and ends with a beat that is heard. */
    private static final double LEAST_AT_ENDS = 3;
    /** A break or a bridge without support is bridged up to this length. */
    private static final double LONGEST_GAP_SECONDS = 35;
    /** A beat is no more than a few seconds' worth of music when there are fewer. */
    private static final int LEAST_BEATS = 8;

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

    /** All steady parts, in order. */
    static List<List<PathBeat>> parts(List<PathBeat> beats) {
        List<List<PathBeat>> parts = new ArrayList<>();
        int window = Math.min(WINDOW_BEATS, beats.size());
        int first = -1;
        int end = -1;
        double sum = 0;
        for (int i = 0; i < beats.size(); i++) {
            sum += beats.get(i).support() - (i >= window ? beats.get(i - window).support() : 0);
            if (i < window - 1 || sum < LEAST_SUPPORT * window) {
                continue;
            }
            int from = i - window + 1;
            if (first < 0) {
                first = from;
            } else if (from > end
                    && beats.get(from).seconds() - beats.get(end - 1).seconds() > LONGEST_GAP_SECONDS) {
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

    private static void add(List<List<PathBeat>> parts, List<PathBeat> beats, int from, int to) {
        int first = from;
        int end = to;
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
