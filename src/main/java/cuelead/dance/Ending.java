package cuelead.dance;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a sheet says to finish.
 *
 * @param words      as written
 * @param wall       the wall on which it comes, from 1; empty = the last one that the music leaves room for
 * @param afterCount the last count of that wall that is danced; empty = all of it
 * @param part       what is danced then; empty where the words tell no steps that are understood
 * @param line       1-based line of the sheet
 */
public record Ending(String words, OptionalInt wall, OptionalInt afterCount, Optional<Part> part, int line) {
    /** The name of its part. */
    public static final String NAME = "ENDING";

    /** Counts of a wall that are danced before it. */
    public int countsOf(Part wallPart) {
        return Math.min(afterCount.orElse(wallPart.counts()), wallPart.counts());
    }
}
