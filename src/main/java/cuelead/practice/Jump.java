package cuelead.practice;

import cuelead.plan.DancedCount;

/**
 * What came of a wish to jump.
 *
 * @param aim the section that is meant; the first one where the song's beginning is
 * @param way where its run-up begins, seen from what was heard before
 */
public record Jump(DancedCount aim, Way way) {
    /** Where a jump leads. */
    public enum Way {
        ON,
        BACK,
        /** To the beginning of the song: the dance has not begun, or there is no room for a run-up. */
        SONG_BEGINNING,
        /** There is no section or wall so far on; what is heard goes on. */
        NO_FURTHER
    }
}
