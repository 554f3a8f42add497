package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The best row of beats from a known beat on, where their lengths are known too: each beat is placed where it is heard, and
 * what its length strays from the known one costs the square of the logarithm (dynamic programming over beat times; Ellis
 * 2007, "Beat tracking by dynamic programming"). Unlike {@link BarPointer}, which lets the tempo go a little anywhere, it does
 * not follow what little is heard away from the tempo.
 */
final class PulseSearch {
    /** Cost of straying, as alpha of the paper; 1500 to 4000 do as well. */
    private static final double STIFFNESS = 2500;
    /** A beat is at most so many times as long, or as short, as it should be. */
    private static final double LONGEST = 1.5;

    private final Observations heard;

    PulseSearch(Observations heard) {
        this.heard = heard;
    }

    /**
     * Where to search.
     *
     * @param fromSeconds   a known beat
     * @param toSeconds     another one, or about where the last beat may be; before {@code fromSeconds} to search backwards
     * @param firstSeconds  length of the beats next to the known one
     * @param lastSeconds   their length at the other end; in between it changes evenly
     * @param endsWithABeat whether {@code toSeconds} is a known beat
     */
    record Stretch(
            double fromSeconds, double toSeconds, double firstSeconds, double lastSeconds, boolean endsWithABeat) {
        int direction() {
            return toSeconds > fromSeconds ? 1 : -1;
        }

        /** How far the search goes. */
        int frames() {
            double beyond = endsWithABeat ? 0 : lastSeconds / 2;
            return frame(Math.abs(toSeconds - fromSeconds) + beyond);
        }

        /** Known length of a beat so many frames from the known one, in frames. */
        double length(int at) {
            double part = (double) at / frames();
            return (firstSeconds + (lastSeconds - firstSeconds) * part) * Observations.FRAMES_PER_SECOND;
        }

        int frameAt(int at) {
            return frame(fromSeconds) + direction() * at;
        }

        private static int frame(double seconds) {
            return (int) Math.round(seconds * Observations.FRAMES_PER_SECOND);
        }
    }

    /** The beats after the known one, without the one at the other end, in order of time; none where none fit. */
    List<PathBeat> find(Stretch stretch) {
        int frames = stretch.frames();
        double[] best = new double[frames + 1];
        int[] before = new int[frames + 1];
        Arrays.fill(best, Double.NEGATIVE_INFINITY);
        best[0] = 0;
        for (int at = 1; at <= frames; at++) {
            double length = stretch.length(at);
            int earliest = (int) Math.max(0, at - Math.round(LONGEST * length));
            int latest = (int) (at - Math.round(length / LONGEST));
            for (int from = earliest; from <= latest; from++) {
                double score = best[from] - cost(at - from, length);
                if (score > best[at]) {
                    best[at] = score;
                    before[at] = from;
                }
            }
            best[at] += heard.beatOverNone(stretch.frameAt(at), length);
        }
        int last = stretch.endsWithABeat() ? frames : highest(best, frames - (int) stretch.length(frames));
        return best[last] == Double.NEGATIVE_INFINITY ? List.of() : traceBack(stretch, before, last);
    }

    private static int highest(double[] best, int from) {
        int highest = Math.max(1, from);
        for (int at = highest; at < best.length; at++) {
            highest = best[at] > best[highest] ? at : highest;
        }
        return highest;
    }

    private static double cost(int frames, double length) {
        double strays = Math.log(frames / length);
        return STIFFNESS * strays * strays;
    }

    private List<PathBeat> traceBack(Stretch stretch, int[] before, int last) {
        List<PathBeat> beats = new ArrayList<>();
        int end = stretch.endsWithABeat() ? before[last] : last;
        for (int at = end; at > 0; at = before[at]) {
            int frame = stretch.frameAt(at);
            if (frame >= 0 && frame < heard.frames()) {
                beats.add(beat(frame, at - before[at], stretch.length(at)));
            }
        }
        if (stretch.direction() > 0) {
            Collections.reverse(beats);
        }
        return beats;
    }

    private PathBeat beat(int frame, int frames, double length) {
        double seconds = new Peak(heard).near(frame, (int) length) / Observations.FRAMES_PER_SECOND;
        double support = heard.beatOverNone(frame, length) - cost(frames, length);
        return new PathBeat(seconds, 0, (double) frames / Observations.FRAMES_PER_SECOND, support);
    }
}
