package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import cuelead.dsp.beat.PulseSearch.Stretch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds beats anew where they are hardly heard: a bridge without drums, a soft intro, a break. There the search over the
 * whole song follows whatever is struck, and strays; but the beats on either side are known, and how long a beat is there. So
 * the stretch is searched from them with {@link PulseSearch}, and what is found is taken unless it is heard much worse.
 */
final class SoftStretches {
    /** A beat is well heard when those about it, so many to either side, have this support on the mean; 5 to 7 do as well. */
    private static final double WELL_HEARD = 6;

    private static final int ABOUT_BEATS = 4;
    /** So many beats in a row must be well heard to be held on to. */
    private static final int FEWEST_WELL_HEARD = 8;
    /** Fewer beats are not searched for anew. */
    private static final int FEWEST_SOFT = 6;
    /** Well-heard beats that tell the length of a beat. */
    private static final int LENGTH_BEATS = 16;
    /** Where the tempo differs by more on the two sides, the band has changed it, and nobody knows where. */
    private static final double LARGEST_CHANGE = 0.08;
    /** Where beats between two known ones must stray by more on the mean, the band has paused. */
    private static final double MOST_UNEVEN = 0.05;
    /** So much less support, on the mean, is no worse: a search that follows everything finds more of it. */
    private static final double HARDLY_WORSE = 2;

    private final List<PathBeat> beats;
    private final boolean[] wellHeard;
    private final PulseSearch search;

    private SoftStretches(List<PathBeat> beats, Activations heard) {
        this.beats = beats;
        this.wellHeard = wellHeard(beats);
        this.search = new PulseSearch(new Observations(heard));
    }

    /** The beats, those of soft stretches found anew; those have no place in the bar (0). */
    static List<PathBeat> foundAnew(List<PathBeat> beats, Activations heard) {
        return new SoftStretches(beats, heard).all();
    }

    private static boolean[] wellHeard(List<PathBeat> beats) {
        boolean[] wellHeard = new boolean[beats.size()];
        int from = 0;
        for (int i = 0; i <= wellHeard.length; i++) {
            if (i < wellHeard.length && isWellHeard(beats, i)) {
                continue;
            }
            if (i - from >= FEWEST_WELL_HEARD) {
                Arrays.fill(wellHeard, from, i, true);
            }
            from = i + 1;
        }
        return wellHeard;
    }

    private static boolean isWellHeard(List<PathBeat> beats, int beat) {
        int first = Math.max(0, beat - ABOUT_BEATS);
        int end = Math.min(beats.size(), beat + ABOUT_BEATS + 1);
        return beats.get(beat).support() > 0 && meanSupport(beats.subList(first, end)) >= WELL_HEARD;
    }

    private static double meanSupport(List<PathBeat> beats) {
        return beats.stream().mapToDouble(PathBeat::support).average().orElse(Double.NEGATIVE_INFINITY);
    }

    private List<PathBeat> all() {
        List<PathBeat> all = new ArrayList<>();
        int i = 0;
        while (i < beats.size()) {
            int end = i;
            while (end < beats.size() && wellHeard[end] == wellHeard[i]) {
                end++;
            }
            all.addAll(wellHeard[i] || end - i < FEWEST_SOFT ? beats.subList(i, end) : better(i, end));
            i = end;
        }
        return all;
    }

    /** The beats of a soft stretch: those found anew, or those that were there. */
    private List<PathBeat> better(int from, int end) {
        List<PathBeat> old = beats.subList(from, end);
        List<PathBeat> anew = anew(from, end);
        return meanSupport(anew) < meanSupport(old) - HARDLY_WORSE ? old : anew;
    }

    private List<PathBeat> anew(int from, int end) {
        boolean isAfterKnown = from > 0;
        boolean isBeforeKnown = end < beats.size();
        if (isAfterKnown && isBeforeKnown) {
            return between(from - 1, end);
        }
        if (isAfterKnown) {
            double length = length(from - 1, -1);
            return search.find(new Stretch(seconds(from - 1), seconds(end - 1), length, length, false));
        }
        if (isBeforeKnown) {
            double length = length(end, 1);
            return search.find(new Stretch(seconds(end), seconds(from), length, length, false));
        }
        return List.of();
    }

    private List<PathBeat> between(int known, int next) {
        double first = length(known, -1);
        double last = length(next, 1);
        if (Math.abs(last / first - 1) > LARGEST_CHANGE) {
            return List.of();
        }
        List<PathBeat> found = search.find(new Stretch(seconds(known), seconds(next), first, last, true));
        double each = (seconds(next) - seconds(known)) / (found.size() + 1);
        return Math.abs(Math.log(2 * each / (first + last))) > MOST_UNEVEN ? List.of() : found;
    }

    private double seconds(int beat) {
        return beats.get(beat).seconds();
    }

    /** The middle length of the well-heard beats from one on. */
    private double length(int known, int direction) {
        List<Double> lengths = new ArrayList<>();
        int next = known + direction;
        while (lengths.size() < LENGTH_BEATS && next >= 0 && next < beats.size() && wellHeard[next]) {
            lengths.add(Math.abs(seconds(next) - seconds(next - direction)));
            next += direction;
        }
        double[] sorted =
                lengths.stream().mapToDouble(length -> length).sorted().toArray();
        return sorted[sorted.length / 2];
    }
}
