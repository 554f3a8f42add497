package cuelead.window.floor;

import java.util.List;
import java.util.OptionalInt;

/**
 * What stands on the floor view at a moment.
 *
 * @param call     what is said now; empty while nothing is
 * @param next     the call after it; may be empty
 * @param wall     {@code Wall 2}, {@code Starts in 5 beats}
 * @param facing   {@code 3 o'clock}; empty when nothing is danced
 * @param degrees  where the dancers face, clockwise from the front; empty when nothing is danced
 * @param section  {@code S2}; may be empty
 * @param heading  the section's heading; may be empty
 * @param counts   those of the section as they are said
 * @param count    index of the one that is danced; -1 when none is
 * @param blocks   the sections of this wall, in order
 * @param block    index of the one that is danced; -1 when none is
 * @param wallEnd  what comes at the end of the wall; may be empty
 * @param state    how it plays, in short parts
 * @param notice   what was just done; may be empty
 * @param isStill  whether nothing goes on
 * @param beat     how much of the beat is over, 0 to 1
 */
record FloorScene(
        String call,
        String next,
        String wall,
        String facing,
        OptionalInt degrees,
        String section,
        String heading,
        List<String> counts,
        int count,
        List<Block> blocks,
        int block,
        String wallEnd,
        List<String> state,
        String notice,
        boolean isStill,
        double beat) {
    /** A section of a wall, as long as it is danced there. */
    record Block(String name, int counts) {}

    /** Of no dance: every part is there. */
    static FloorScene sample(String call) {
        return new FloorScene(
                call,
                call,
                "Wall 1",
                "12 o'clock",
                OptionalInt.of(0),
                "S1",
                "",
                List.of("1", "2", "3", "4", "5", "6", "7", "8"),
                0,
                List.of(new Block("S1", 8)),
                0,
                "in 8 counts: wall 2",
                List.of("Playing"),
                "",
                false,
                0);
    }

    FloorScene {
        counts = List.copyOf(counts);
        blocks = List.copyOf(blocks);
        state = List.copyOf(state);
    }
}
