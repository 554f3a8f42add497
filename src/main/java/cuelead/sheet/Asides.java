package cuelead.sheet;

import cuelead.dance.Counts;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines without counts among lines that have them. They may be danced, or say something beside the dance: a hint, an easier
 * way, a greeting. Where all counts around them are written none of them is danced; where some are missing, it may well be
 * these lines that tell of them.
 */
final class Asides {
    /** A line that nobody dances. */
    static final String NOT_READ = "not_read";

    private final Problems problems;
    private final List<Aside> lines = new ArrayList<>();

    Asides(Problems problems) {
        this.problems = problems;
    }

    /** A line that stands behind so many counts. */
    record Aside(SheetLine line, Counts behind) {}

    void add(SheetLine line, Counts behind) {
        lines.add(new Aside(line, behind));
    }

    /** No count is missing where they stand. */
    void dismiss() {
        lines.forEach(aside -> note(problems, aside.line(), "since no count is left for it"));
        lines.clear();
    }

    /** Counts are missing where they stand: each is told, and handed over since what it dances is not known. */
    List<Aside> suspect() {
        List<Aside> suspected = List.copyOf(lines);
        lines.clear();
        suspected.forEach(aside -> unread(problems, aside.line()));
        return suspected;
    }

    /** A line that nobody dances. */
    static void note(Problems problems, SheetLine line, String why) {
        problems.note(NOT_READ, line.number(), line.firstColumn(), "This line is not read, " + why + ".", "");
    }

    /** What the line says is kept for those who write the sheet anew. */
    static void leftOut(Problems problems, SheetLine line) {
        problems.unread(Problems.Span.of(line.number(), Problems.Extent.LEFT_OUT));
    }

    /** A line that may be danced. */
    static void unread(Problems problems, SheetLine line) {
        leftOut(problems, line);
        problems.warning(
                "unread",
                line.number(),
                line.firstColumn(),
                "This line is not understood, so it is left out.",
                "Begin it with its counts (\"1-2 ...\"), or with \"Note:\" if it is no step.");
    }
}
