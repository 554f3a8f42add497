package cuelead.time;

/**
 * A point on a {@link BeatGrid}, in ticks (960 a beat) from the grid's first beat; negative before it. Two
 * positions are never added: their difference is a length, {@link Beats}.
 */
public record BeatPosition(long ticks) implements Comparable<BeatPosition> {
    /** The grid's beat with this index; 0 is the first. */
    public static BeatPosition atBeat(long index) {
        return new BeatPosition(Math.multiplyExact(index, Beats.TICKS_PER_BEAT));
    }

    public BeatPosition plus(Beats length) {
        return new BeatPosition(ticks + length.ticks());
    }

    public BeatPosition minus(Beats length) {
        return new BeatPosition(ticks - length.ticks());
    }

    /** The length from an earlier position to this one; negative when {@code earlier} is later. */
    public Beats since(BeatPosition earlier) {
        return new Beats(ticks - earlier.ticks);
    }

    /** Index of the grid beat at or before this position. */
    public long beatIndex() {
        return Math.floorDiv(ticks, Beats.TICKS_PER_BEAT);
    }

    public boolean isOnBeat() {
        return Math.floorMod(ticks, Beats.TICKS_PER_BEAT) == 0;
    }

    @Override
    public int compareTo(BeatPosition other) {
        return Long.compare(ticks, other.ticks);
    }
}
