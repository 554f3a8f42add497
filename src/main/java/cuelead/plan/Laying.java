package cuelead.plan;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.time.Beats;
import java.util.function.DoubleUnaryOperator;

/**
 * How a dance is laid over a grid.
 *
 * @param countOne   where its first count falls
 * @param countRate  counts a beat of the grid
 * @param endSeconds the end of the music; no count falls after it
 * @param mostWalls  the most walls that are danced
 * @param moved      how much later than {@code countOne} says the whole dance is danced; below zero = earlier
 * @param finish     whether the sheet's ending is danced
 */
public record Laying(
        CountOne countOne, CountRate countRate, double endSeconds, int mostWalls, Beats moved, Finish finish) {
    /** More walls than any song has. */
    public static final int UNTIL_THE_MUSIC_ENDS = 100_000;

    /** A dance that begins where {@code countOne} says. */
    public Laying(CountOne countOne, CountRate countRate, double endSeconds, int mostWalls) {
        this(countOne, countRate, endSeconds, mostWalls, Beats.ZERO, Finish.GOING_ON);
    }

    /** What is done at the end. */
    public enum Finish {
        /** Walls follow each other until the music ends. */
        GOING_ON,
        /** The ending comes where the sheet says, or in the last wall that leaves room for it. */
        WITH_THE_ENDING
    }

    /** The same with the sheet's ending. */
    public Laying withTheEnding() {
        return new Laying(countOne, countRate, endSeconds, mostWalls, moved, Finish.WITH_THE_ENDING);
    }

    public Laying {
        if (!(endSeconds >= 0)) {
            throw new IllegalArgumentException("music ends before it begins: " + endSeconds + " s");
        }
        if (mostWalls < 1) {
            throw new IllegalArgumentException("fewer walls than one: " + mostWalls);
        }
    }

    /** The same, so much later again. */
    public Laying movedBy(Beats more) {
        return new Laying(countOne, countRate, endSeconds, mostWalls, moved.plus(more), finish);
    }

    /** The same with music that ends at another time. */
    public Laying until(double otherEndSeconds) {
        return new Laying(countOne, countRate, otherEndSeconds, mostWalls, moved, finish);
    }

    /**
     * The same over the same beats at other times.
     *
     * @param seconds where a time of these beats is in the other ones; rising
     */
    public Laying timed(DoubleUnaryOperator seconds) {
        CountOne first = countOne instanceof CountOne.AtSeconds at
                ? new CountOne.AtSeconds(seconds.applyAsDouble(at.songSeconds()))
                : countOne;
        return new Laying(first, countRate, seconds.applyAsDouble(endSeconds), mostWalls, moved, finish);
    }

    /** The same, from another first count. */
    public Laying from(CountOne other) {
        return new Laying(other, countRate, endSeconds, mostWalls, Beats.ZERO, finish);
    }
}
