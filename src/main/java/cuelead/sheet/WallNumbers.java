package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** Tells walls that can be danced from those that no song has. */
final class WallNumbers {
    /** Walls of 16 counts at 200 beats a minute in a song of five minutes, rounded. */
    private static final int MOST = 64;

    private WallNumbers() {}

    static boolean isReal(int wall) {
        return wall >= 1 && wall <= MOST;
    }

    /** The numbers that can be, each once; the others are reported. */
    static List<Integer> checked(List<Integer> walls, SheetLine line, Problems problems) {
        List<Integer> real = new ArrayList<>();
        for (int wall : walls) {
            if (!isReal(wall)) {
                problems.error(
                        "no_such_wall",
                        line.number(),
                        line.firstColumn(),
                        "There is no wall " + wall + ": walls are numbered from 1, and no song is long enough for more"
                                + " than " + MOST + ".",
                        "Count the walls from the beginning of the song.");
            } else if (!real.contains(wall)) {
                real.add(wall);
            }
        }
        return real;
    }
}
