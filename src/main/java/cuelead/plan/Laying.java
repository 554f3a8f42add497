package cuelead.plan;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;

/**
 * How a dance is laid over a grid.
 *
 * @param countOne   where its first count falls
 * @param countRate  counts a beat of the grid
 * @param endSeconds the end of the music; no count falls after it
 * @param mostWalls  the most walls that are danced
 */
public record Laying(CountOne countOne, CountRate countRate, double endSeconds, int mostWalls) {
    /** More walls than any song has. */
    public static final int UNTIL_THE_MUSIC_ENDS = 100_000;

    public Laying {
        if (!(endSeconds >= 0)) {
            throw new IllegalArgumentException("music ends before it begins: " + endSeconds + " s");
        }
        if (mostWalls < 1) {
            throw new IllegalArgumentException("fewer walls than one: " + mostWalls);
        }
    }
}
