package cuelead.steer;

import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import java.util.List;
import java.util.Optional;

/** What comes at the end of a wall, in a few words. */
public final class WallEnd {
    private WallEnd() {}

    /** {@code in 12 counts: restart after count 16, wall 4 facing 6 o'clock (back)}. */
    static String after(Timeline timeline, DancedCount now) {
        Run run = now.run();
        boolean isLast = timeline.ending()
                .last()
                .map(DancedCount::run)
                .filter(run::equals)
                .isPresent();
        if (isLast && !timeline.ending().isWhole()) {
            return "the music ends on count "
                    + timeline.ending().last().orElseThrow().countInRun() + " of this wall";
        }
        int left = run.counts() - now.countInRun() + 1;
        String restart = run.restart()
                .map(broken -> "restart after count " + run.counts() + ", ")
                .orElse("");
        String next = isLast ? "the dance ends" : next(timeline.runs(), run);
        return "in " + Told.number(left, "count") + ": " + restart + next;
    }

    /** What the dance begins with. */
    static String first(Timeline timeline) {
        return wall(timeline.runs().get(0));
    }

    private static String next(List<Run> runs, Run run) {
        int index = runs.indexOf(run) + 1;
        if (index >= runs.size()) {
            return "the dance ends";
        }
        Run next = runs.get(index);
        if (next.isEnding()) {
            return "ending of " + Told.number(next.counts(), "count");
        }
        if (next.isWall()) {
            return wall(next);
        }
        Optional<Run> wall = runs.subList(index, runs.size()).stream()
                .filter(later -> later.isWall())
                .findFirst();
        return "tag of " + Told.number(next.counts(), "count")
                + wall.map(later -> ", then " + wall(later)).orElse("");
    }

    private static String wall(Run run) {
        String side =
                switch (run.startFacing().degrees()) {
                    case 0 -> " (front)";
                    case 180 -> " (back)";
                    default -> "";
                };
        return "wall " + run.wall() + " facing " + Told.facing(run.startFacing()) + side;
    }
}
