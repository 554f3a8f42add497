package cuelead.dance;

/**
 * A facing that the sheet claims for the end of a wall.
 *
 * @param wall   from 1
 * @param stated as written
 * @param line   1-based line of the sheet
 */
public record WallClaim(int wall, Facing stated, int line) {}
