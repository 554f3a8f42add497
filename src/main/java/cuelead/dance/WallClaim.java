package cuelead.dance;

/**
 * A facing that the sheet claims for the beginning or the end of a wall.
 *
 * @param wall   from 1
 * @param moment when it is faced
 * @param stated as written
 * @param line   1-based line of the sheet
 */
public record WallClaim(int wall, Moment moment, Facing stated, int line) {
    /** A moment of a wall. */
    public enum Moment {
        BEGINNING,
        /** Either its beginning or the place where a restart breaks it off: sheets write both as "wall 3 (6:00)". */
        BEGINNING_OR_BREAK,
        /** Behind its last count, before a tag. */
        END
    }
}
