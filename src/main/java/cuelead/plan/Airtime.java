package cuelead.plan;

import java.util.Map;
import java.util.TreeMap;

/** The spans of time in which something is said; no two of them meet. Seconds of the song. */
final class Airtime {
    /** Silence kept between two calls, so that they are heard as two. */
    static final double GAP_SECONDS = 0.02;

    private final TreeMap<Double, Double> endByStart;

    Airtime() {
        endByStart = new TreeMap<>();
    }

    /** As much as another has taken, to take more from. */
    Airtime(Airtime other) {
        endByStart = new TreeMap<>(other.endByStart);
    }

    boolean isFree(double startSeconds, double endSeconds) {
        Map.Entry<Double, Double> before = endByStart.floorEntry(startSeconds);
        if (before != null && before.getValue() + GAP_SECONDS > startSeconds) {
            return false;
        }
        Double after = endByStart.ceilingKey(startSeconds);
        return after == null || endSeconds + GAP_SECONDS <= after;
    }

    /** Takes a span that is free. */
    void take(double startSeconds, double endSeconds) {
        if (!isFree(startSeconds, endSeconds)) {
            throw new IllegalArgumentException("already taken: " + startSeconds + " to " + endSeconds + " s");
        }
        endByStart.put(startSeconds, endSeconds);
    }
}
