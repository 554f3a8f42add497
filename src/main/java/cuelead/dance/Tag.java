package cuelead.dance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Extra counts danced once on certain walls: at their end, or within them.
 *
 * @param part         what is danced
 * @param afterWalls   the walls (from 1) on which it comes
 * @param afterCount   the count of the wall behind which it comes; empty = at the wall's end
 * @param statedFacing the facing that the sheet claims, where it does
 * @param line         1-based line of the sheet
 */
public record Tag(
        Part part, List<Integer> afterWalls, OptionalInt afterCount, Optional<Facing> statedFacing, int line) {
    public Tag {
        afterWalls = List.copyOf(afterWalls);
        if (afterWalls.stream().anyMatch(wall -> wall < 1)) {
            throw new IllegalArgumentException("a tag after walls " + afterWalls);
        }
    }

    /** A tag at the end of its walls. */
    public Tag(Part part, List<Integer> afterWalls, Optional<Facing> statedFacing, int line) {
        this(part, afterWalls, OptionalInt.empty(), statedFacing, line);
    }
}
