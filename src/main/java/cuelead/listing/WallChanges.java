package cuelead.listing;

import cuelead.dance.Ending;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What becomes of walls, in sentences. */
public final class WallChanges {
    private WallChanges() {}

    /** {@code Wall 3 is broken off after count 16 and begins again.} */
    public static String told(Restart restart) {
        return "Wall " + restart.wall() + " is broken off after count " + restart.afterCount() + " and begins again"
                + (restart.changed().isEmpty() ? "." : ", with other steps before that:");
    }

    /** {@code TAG of 4 counts after wall 2, 5.} */
    public static String told(Tag tag) {
        int counts = tag.part().counts();
        return tag.part().name() + " of " + counts + (counts == 1 ? " count" : " counts") + after(tag) + ".";
    }

    private static String after(Tag tag) {
        if (tag.afterWalls().isEmpty()) {
            return ", where the sequence names it";
        }
        String where = tag.afterCount().isPresent()
                ? " after count " + tag.afterCount().getAsInt() + " of wall "
                : " after wall ";
        return where + numbers(tag.afterWalls());
    }

    private static String numbers(List<Integer> walls) {
        return walls.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The words of an ending, with its name before them. */
    public static String told(Ending ending) {
        boolean isNamed = ending.words().toLowerCase(Locale.ROOT).startsWith("ending");
        return (isNamed ? "" : "Ending: ") + ending.words();
    }
}
