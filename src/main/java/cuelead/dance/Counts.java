package cuelead.dance;

/**
 * A length in counts of a dance, as an integer of ticks: 960 to a count. Counts belong to the sheet, beats to
 * the song; the plan maps one to the other. May be negative.
 */
public record Counts(long ticks) implements Comparable<Counts> {
    public static final long TICKS_PER_COUNT = 960;
    public static final Counts ZERO = new Counts(0);

    public static Counts of(long wholeCounts) {
        return new Counts(Math.multiplyExact(wholeCounts, TICKS_PER_COUNT));
    }

    public Counts plus(Counts other) {
        return new Counts(ticks + other.ticks);
    }

    public Counts minus(Counts other) {
        return new Counts(ticks - other.ticks);
    }

    public double toDecimal() {
        return (double) ticks / TICKS_PER_COUNT;
    }

    @Override
    public int compareTo(Counts other) {
        return Long.compare(ticks, other.ticks);
    }
}
