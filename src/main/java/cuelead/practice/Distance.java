package cuelead.practice;

import java.util.Arrays;
import java.util.OptionalDouble;

/** How far one output is ahead of another, from single readings that scatter by a few milliseconds. */
final class Distance {
    private static final int READINGS = 24;

    private final double[] readings = new double[READINGS];
    private int known;

    void forget() {
        known = 0;
    }

    /** A reading; gives the distance when there are enough of them, and begins anew. */
    OptionalDouble after(double aheadSeconds) {
        readings[known++] = aheadSeconds;
        if (known < READINGS) {
            return OptionalDouble.empty();
        }
        known = 0;
        double[] sorted = readings.clone();
        Arrays.sort(sorted);
        return OptionalDouble.of((sorted[READINGS / 2 - 1] + sorted[READINGS / 2]) / 2);
    }
}
