package cuelead.practice;

/** What came of a wish to move the dance by a wall. */
public enum MovedWall {
    MOVED,
    /** Then nothing would be danced before the music ends, so it lies as it lay. */
    NONE_LEFT
}
