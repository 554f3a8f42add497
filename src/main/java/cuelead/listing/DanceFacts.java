package cuelead.listing;

import cuelead.dance.Dance;
import java.util.OptionalInt;

/** A dance in a line. */
public final class DanceFacts {
    private DanceFacts() {}

    /** {@code 32 counts, 4 walls, Beginner}, as far as the sheet states it. */
    public static String of(Dance dance) {
        OptionalInt walls = dance.header().statedWalls();
        String level = dance.header().level();
        return (dance.isPhrased() ? dance.parts().size() + " parts, " : "")
                + dance.counts() + " counts"
                + (walls.isPresent() ? ", " + walls(walls.getAsInt()) : "")
                + (level.isBlank() ? "" : ", " + level);
    }

    private static String walls(int number) {
        return number + (number == 1 ? " wall" : " walls");
    }
}
