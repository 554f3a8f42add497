package cuelead.practice;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How far one output is ahead of another, from single readings that scatter by a few milliseconds and jump while one of
 * them has gone over to another place and the other not yet.
 */
final class Distance {
    private static final int READINGS = 24;
    /** Smaller distances are left alone; listeners bear twenty times as much between two loudspeakers. */
    private static final double SMALL_SECONDS = 0.001;
    /** A larger one is a jump that is under way. */
    private static final double LARGE_SECONDS = 1;

    private final double[] readings = new double[READINGS];
    private int known;

    /** A reading; gives the distance to be made up when it has been steadily too large. */
    OptionalDouble after(double aheadSeconds) {
        if (Math.abs(aheadSeconds) > LARGE_SECONDS) {
            known = 0;
            return OptionalDouble.empty();
        }
        readings[known++] = aheadSeconds;
        if (known < READINGS) {
            return OptionalDouble.empty();
        }
        known = 0;
        double[] sorted = readings.clone();
        Arrays.sort(sorted);
        double median = (sorted[READINGS / 2 - 1] + sorted[READINGS / 2]) / 2;
        return Math.abs(median) < SMALL_SECONDS ? OptionalDouble.empty() : OptionalDouble.of(median);
    }
}
