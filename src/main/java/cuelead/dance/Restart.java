package cuelead.dance;

import java.util.Optional;

/**
 * A wall that is broken off to begin again from count 1.
 *
 * @param wall         which wall, from 1
 * @param afterCount   the last count that is danced on it, counted through the dance, from 1
 * @param statedFacing the facing that the sheet claims, where it does
 * @param line         1-based line of the sheet
 */
public record Restart(int wall, int afterCount, Optional<Facing> statedFacing, int line) {
    public Restart {
        if (wall < 1 || afterCount < 1) {
            throw new IllegalArgumentException("a restart on wall " + wall + " after count " + afterCount);
        }
    }
}
