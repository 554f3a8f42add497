package cuelead.time;

/**
 * A length in beats of a song, as an integer of ticks: 960 to a beat, so that halves, thirds, quarters and
 * sixths are exact. May be negative. Immutable; safe on any thread.
 */
public record Beats(long ticks) implements Comparable<Beats> {
    public static final long TICKS_PER_BEAT = 960;
    public static final Beats ZERO = new Beats(0);
    public static final Beats HALF = new Beats(TICKS_PER_BEAT / 2);
    public static final Beats ONE = new Beats(TICKS_PER_BEAT);

    /** A whole number of beats. */
    public static Beats of(long wholeBeats) {
        return new Beats(Math.multiplyExact(wholeBeats, TICKS_PER_BEAT));
    }

    /** The nearest tick to a decimal number of beats; rejects values that are not finite. */
    public static Beats ofDecimal(double beats) {
        if (!Double.isFinite(beats)) {
            throw new IllegalArgumentException("not a number of beats: " + beats);
        }
        return new Beats(Math.round(beats * TICKS_PER_BEAT));
    }

    public Beats plus(Beats other) {
        return new Beats(ticks + other.ticks);
    }

    public Beats minus(Beats other) {
        return new Beats(ticks - other.ticks);
    }

    public Beats times(long factor) {
        return new Beats(Math.multiplyExact(ticks, factor));
    }

    /** This length as a decimal number of beats, for display and interpolation only. */
    public double toDecimal() {
        return (double) ticks / TICKS_PER_BEAT;
    }

    @Override
    public int compareTo(Beats other) {
        return Long.compare(ticks, other.ticks);
    }
}
