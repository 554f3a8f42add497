package cuelead.plan;

import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.time.BeatPosition;
import java.util.Optional;

/**
 * One part danced once: a wall (of a phrased dance: a part of its sequence), a tag, or the ending.
 *
 * @param kind        a wall, a tag or the ending
 * @param wall        number of the wall, from 1; for a tag or the ending, of the wall that it follows
 * @param part        what is danced
 * @param counts      how many counts of it are danced when the music lasts: fewer than the part has on a restart
 * @param start       the beat of its first count
 * @param startFacing the way faced at its start
 * @param restart     why it is broken off, if it is
 */
public record Run(
        Kind kind, int wall, Part part, int counts, BeatPosition start, Facing startFacing, Optional<Restart> restart) {
    /** What is danced. */
    public enum Kind {
        WALL,
        TAG,
        ENDING
    }

    public boolean isWall() {
        return kind == Kind.WALL;
    }

    public boolean isEnding() {
        return kind == Kind.ENDING;
    }

    public boolean isTag() {
        return kind == Kind.TAG;
    }
}
