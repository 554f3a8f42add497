package cuelead.dance;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where the sheet says that the dance ends.
 *
 * @param stated     the facing as written
 * @param start      the way that the last wall begins, where that is said; then counts and turn are from there
 * @param wall       the last wall, from 1; empty for the end of the sequence, or where it is not said
 * @param afterCount the last count that is danced on it; empty = the whole wall
 * @param turn       what is turned behind it to finish
 * @param line       1-based line of the sheet
 */
public record EndingClaim(
        Facing stated, Optional<Facing> start, OptionalInt wall, OptionalInt afterCount, Turn turn, int line) {}
