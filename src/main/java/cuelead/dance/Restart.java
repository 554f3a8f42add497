package cuelead.dance;

import java.util.List;
import java.util.Optional;

/**
 * A wall that is broken off to begin again from count 1.
 *
 * @param wall         which wall, from 1
 * @param afterCount   the last count that is danced on it, counted through the dance, from 1
 * @param statedFacing the facing that the sheet claims, where it does
 * @param changed      steps that are danced instead of the last ones before it, counted through the dance; often none
 * @param line         1-based line of the sheet
 */
public record Restart(int wall, int afterCount, Optional<Facing> statedFacing, List<Step> changed, int line) {
    public Restart {
        changed = List.copyOf(changed);
        if (wall < 1 || afterCount < 1) {
            throw new IllegalArgumentException("a restart on wall " + wall + " after count " + afterCount);
        }
    }

    /** A restart behind the steps as they are. */
    public Restart(int wall, int afterCount, Optional<Facing> statedFacing, int line) {
        this(wall, afterCount, statedFacing, List.of(), line);
    }

    public Restart with(List<Step> steps) {
        return new Restart(wall, afterCount, statedFacing, steps, line);
    }

    /** Counts that are danced as on any other wall. */
    int unchangedCounts() {
        return changed.isEmpty()
                ? afterCount
                : Math.min(afterCount, changed.get(0).count().number() - 1);
    }

    /** The turn of the changed steps. */
    Turn changedTurn() {
        return changed.stream().map(Step::turn).reduce(Turn.NONE, Turn::plus);
    }
}
