package cuelead.sheet;

import cuelead.dance.ClockMark;
import cuelead.dance.Counts;
import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.WallWalk;
import java.util.List;
import java.util.Optional;

/**
 * The clock times of a section that is written: those of the sheet where it has them, though they may be wrong, and one
 * behind a section that turns, unless something before it was not understood.
 */
final class WrittenClocks {
    private final Part part;
    private final int before;
    private final Facing start;
    private final List<ClockMark> stated;
    /** A sheet may count from another wall than this one where a part of a phrased dance begins. */
    private final boolean mayBeAdded;

    /**
     * Those of a section that stands behind so many counts of its part.
     *
     * @param start   where the dancers face when the part begins
     * @param isKnown whether all was understood up to the section's end
     */
    WrittenClocks(Dance dance, Part part, int before, Facing start, boolean isKnown) {
        this.part = part;
        this.before = before;
        this.start = start;
        boolean isPart = dance.parts().contains(part);
        stated = dance.claims().clockMarks().stream()
                .filter(mark -> isPart && mark.part().equals(part.name()))
                .toList();
        mayBeAdded = isKnown && ((isPart && !dance.isPhrased()) || stated.isEmpty());
    }

    /** As the sheet says behind an action; empty where it says nothing. */
    String behind(WrittenCounts.Run run) {
        return stated(Counts.of(before).plus(run.last().offset()).plus(new Counts(1)))
                .map(WrittenClocks::written)
                .orElse("");
    }

    /** Behind the last action, where the sheet says nothing. */
    String behind(Section section) {
        Counts end = Counts.of(before + section.length());
        boolean turned = section.steps().stream().anyMatch(step -> !step.turn().isNone());
        boolean isTold = section.steps().stream()
                .reduce((first, second) -> second)
                .flatMap(step ->
                        stated(Counts.of(before).plus(step.count().offset()).plus(new Counts(1))))
                .isPresent();
        return turned && !isTold && mayBeAdded ? written(start.after(WallWalk.turnThrough(part, end))) : "";
    }

    private Optional<Facing> stated(Counts after) {
        return stated.stream()
                .filter(mark -> mark.afterCounts().equals(after))
                .map(ClockMark::stated)
                .findFirst();
    }

    private static String written(Facing facing) {
        return " (" + facing.clock() + ")";
    }
}
