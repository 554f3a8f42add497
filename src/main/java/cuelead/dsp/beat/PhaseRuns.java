package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Runs of beats at one place of the music: between them, within a few beats that are too long or too short, the beat gets
 * over to another place, such as from the beat to the off-beat.
 */
final class PhaseRuns {
    /** Beats on either side that tell how long a beat is hereabouts. */
    private static final int AROUND_BEATS = 16;
    /** A beat that is off by more than this part is on its way to the other side. */
    private static final double UNEVEN = 0.07;
    /** A way over is no longer than this. */
    private static final int LONGEST_WAY = 12;

    private static final int EVEN_BEATS = 3;
    private static final double LEAST_UNEVENNESS = 0.2;
    /** Sums of the way's deviations, as parts of a beat, that lead to another place. */
    private static final double LEAST_SHIFT = 0.25;
    /** The way over is joined by so many beats that are hardly uneven. */
    private static final int MARGIN_BEATS = 4;
    /** So many beats before and after tell how long a beat is there, while the band slows down or speeds up. */
    private static final int NEAR_BEATS = 8;

    /** Places are told apart to a sixth of a beat: halves and thirds both are sixths. */
    static final int PLACES = 6;
    /** So uneven a way that leads back to the same place is a stumble, and even beats take its place. */
    private static final double STUMBLE = 0.8;

    /** Fewer beats at the wrong place are a stumble: even beats take their place. */
    static final int SHORTEST_RUN = 8;

    private final List<PathBeat> beats;
    private final double[] usual;

    /**
     * A run of beats at one place; beats {@code from} up to, and without, {@code to}.
     *
     * @param place in sixths of a beat after the first run's
     */
    record Run(int from, int to, int place) {
        int beats() {
            return to - from;
        }
    }

    /** @param beats enough of them for a way over, with a run before and after it */
    PhaseRuns(List<PathBeat> beats) {
        this.beats = beats;
        this.usual = usualLengths(beats);
    }

    /** Whether there are beats enough to look for runs. */
    static boolean canBeIn(List<PathBeat> beats) {
        return beats.size() >= 2 * LONGEST_WAY;
    }

    private static double[] usualLengths(List<PathBeat> beats) {
        double[] usual = new double[beats.size()];
        for (int i = 0; i < usual.length; i++) {
            int first = Math.max(0, i - AROUND_BEATS);
            int last = Math.min(beats.size() - 1, i + AROUND_BEATS);
            double[] lengths = new double[last - first];
            for (int j = first; j < last; j++) {
                lengths[j - first] = gap(beats, j);
            }
            Arrays.sort(lengths);
            usual[i] = lengths[lengths.length / 2];
        }
        return usual;
    }

    /** From one place to the next such place, as a part of a beat. */
    static double between(int from, int to) {
        return (double) Math.floorMod(to - from, PLACES) / PLACES;
    }

    /** How long a beat is hereabouts, in seconds. */
    double usualSeconds(int beat) {
        return usual[beat];
    }

    private static double gap(List<PathBeat> beats, int i) {
        return beats.get(i + 1).seconds() - beats.get(i).seconds();
    }

    /** How much too long the beat is, as a part of a beat. */
    private double excess(int i) {
        return gap(beats, i) / usual[i] - 1;
    }

    /** In order; one where the beat keeps its place. */
    List<Run> all() {
        List<Run> runs = new ArrayList<>();
        int from = 0;
        int place = 0;
        int i = 0;
        while (i < beats.size() - 1) {
            if (Math.abs(excess(i)) < UNEVEN) {
                i++;
                continue;
            }
            int end = endOfWay(i);
            double shift = shift(i, end);
            double unevenness = 0;
            for (int j = i; j < end; j++) {
                unevenness += Math.abs(excess(j));
            }
            boolean isInside = i >= SHORTEST_RUN && end <= beats.size() - SHORTEST_RUN;
            if (isInside && unevenness > LEAST_UNEVENNESS && end - i <= LONGEST_WAY) {
                boolean isOver = Math.abs(shift - Math.rint(shift)) > LEAST_SHIFT;
                if (isOver || unevenness > STUMBLE) {
                    runs.add(new Run(from, i + 1, place));
                    from = end;
                    place = isOver ? Math.floorMod(place + Math.round(PLACES * shift), PLACES) : place;
                }
            }
            i = end;
        }
        if (from < beats.size()) {
            runs.add(new Run(from, beats.size(), place));
        }
        return runs;
    }

    /** By how much the beats after a way lie later in the music than those before it, as a part of a beat. */
    private double shift(int from, int to) {
        int first = Math.max(0, from - MARGIN_BEATS);
        int last = Math.min(beats.size() - 1, to + MARGIN_BEATS);
        double before = middleLength(Math.max(0, first - NEAR_BEATS), first, usual[from]);
        double after = middleLength(last, Math.min(beats.size() - 1, last + NEAR_BEATS), usual[from]);
        double seconds = beats.get(last).seconds() - beats.get(first).seconds();
        return 2 * seconds / (before + after) - (last - first);
    }

    private double middleLength(int from, int to, double otherwise) {
        double[] lengths = new double[to - from];
        for (int i = from; i < to; i++) {
            lengths[i - from] = gap(beats, i);
        }
        Arrays.sort(lengths);
        return lengths.length < NEAR_BEATS / 2 ? otherwise : lengths[lengths.length / 2];
    }

    /** The first beat from which on several are even. */
    private int endOfWay(int start) {
        int even = 0;
        int i = start;
        while (i < beats.size() - 1 && even < EVEN_BEATS) {
            even = Math.abs(excess(i)) < UNEVEN ? even + 1 : 0;
            i++;
        }
        return i - even;
    }
}
