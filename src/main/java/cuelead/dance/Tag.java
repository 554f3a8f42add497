package cuelead.dance;

import java.util.List;
import java.util.Optional;

/**
 * Extra counts danced once at the end of certain walls.
 *
 * @param part         what is danced
 * @param afterWalls   the walls (from 1) at whose end it comes
 * @param statedFacing the facing that the sheet claims, where it does
 * @param line         1-based line of the sheet
 */
public record Tag(Part part, List<Integer> afterWalls, Optional<Facing> statedFacing, int line) {
    public Tag {
        afterWalls = List.copyOf(afterWalls);
        if (afterWalls.stream().anyMatch(wall -> wall < 1)) {
            throw new IllegalArgumentException("a tag after walls " + afterWalls);
        }
    }
}
