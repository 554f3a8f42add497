package cuelead.song;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Joins two runs of beats so that no beat stands too close to its neighbour and none is missing between them. */
final class Seam {
    /** Beats closer than this part of the usual distance are one beat. */
    private static final double TOO_CLOSE = 0.7;

    private Seam() {}

    /** The second run's beats win where both have one. */
    static List<GridBeat> join(List<GridBeat> first, List<GridBeat> second) {
        List<GridBeat> joined = new ArrayList<>(first);
        if (first.size() < 2 || second.size() < 2) {
            joined.addAll(second);
            return joined;
        }
        double usual = Math.min(spacing(first), spacing(second));
        double begins = second.get(0).seconds();
        while (!joined.isEmpty() && begins - last(joined).seconds() < TOO_CLOSE * usual) {
            joined.remove(joined.size() - 1);
        }
        fill(joined, second.get(0), usual);
        joined.addAll(second);
        return joined;
    }

    private static void fill(List<GridBeat> joined, GridBeat next, double usual) {
        if (joined.isEmpty()) {
            return;
        }
        GridBeat before = last(joined);
        int steps = (int) Math.round((next.seconds() - before.seconds()) / usual);
        int bar = GridBeat.highest(joined, GridBeat::inBar);
        int phrase = GridBeat.highest(joined, GridBeat::inPhrase);
        for (int i = 1; i < steps; i++) {
            double seconds = before.seconds() + (next.seconds() - before.seconds()) * i / steps;
            joined.add(new GridBeat(
                    seconds, CountShift.moved(before.inBar(), i, bar), CountShift.moved(before.inPhrase(), i, phrase)));
        }
    }

    private static GridBeat last(List<GridBeat> beats) {
        return beats.get(beats.size() - 1);
    }

    private static double spacing(List<GridBeat> beats) {
        double[] gaps = new double[beats.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = beats.get(i + 1).seconds() - beats.get(i).seconds();
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }
}
