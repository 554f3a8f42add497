package cuelead.steer;

import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import java.util.Optional;

/** How the music leaves the dancers, in one sentence. */
public final class SongEnd {
    private SongEnd() {}

    /**
     * How a dance over that music ends.
     *
     * @param music as it is named at the head of a sentence, such as "The song"
     */
    public static String of(Timeline timeline, String music) {
        Optional<DancedCount> last = timeline.ending().last();
        if (last.isEmpty()) {
            return music + " ends before count 1.";
        }
        Run run = last.get().run();
        String facing = ", facing " + Told.facing(timeline.ending().facing());
        if (run.isEnding() && timeline.ending().isWhole()) {
            return "The ending comes on " + where(timeline, run) + ", and leaves the dancers facing "
                    + Told.facing(timeline.ending().facing()) + rest(timeline) + ".";
        }
        if (timeline.isUsedUp()) {
            return "The sequence is used up with the last count of " + where(run) + facing + rest(timeline) + ".";
        }
        return timeline.ending().isWhole()
                ? music + " ends with the last count of " + where(run) + facing + "."
                : music + " ends in " + where(run) + ", on count " + last.get().countInRun() + facing + ".";
    }

    /** {@code wall 3}, {@code the tag after wall 2}, {@code the ending on wall 9}. */
    static String where(Run run) {
        String wall = "wall " + run.wall();
        return switch (run.kind()) {
            case WALL -> wall;
            case TAG -> "the tag after " + wall;
            case ENDING -> "the ending on " + wall;
        };
    }

    private static String where(Timeline timeline, Run ending) {
        int counts = timeline.runs().stream()
                .filter(run -> run.isWall() && run.wall() == ending.wall())
                .mapToInt(Run::counts)
                .sum();
        return "wall " + ending.wall() + (counts == 0 ? " at its beginning" : " after count " + counts);
    }

    private static String rest(Timeline timeline) {
        long seconds = Math.round(timeline.restSeconds());
        return seconds < Timeline.LONG_REST_SECONDS
                ? ""
                : "; " + Told.number(seconds, "second") + " of music remain" + (seconds == 1 ? "s" : "");
    }
}
