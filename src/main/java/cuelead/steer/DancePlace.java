package cuelead.steer;

import cuelead.dance.Counts;
import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.time.BeatPosition;
import java.util.Optional;

/**
 * Where in the dance the music is, to be read.
 *
 * @param wall      {@code Wall 2}, {@code Tag after wall 2}, {@code Starts in 5 beats}, {@code The dance is over}
 * @param facing    {@code 3 o'clock}; empty when nothing is danced
 * @param section   {@code S1}; empty when nothing is danced
 * @param heading   the section's heading; may be empty
 * @param count     {@code 4}, {@code 4&}; empty when nothing is danced
 * @param eight     the section's counts, or those that lead into the dance
 * @param atWallEnd what comes at the end of the wall; empty when nothing comes
 */
public record DancePlace(
        String wall, String facing, String section, String heading, String count, Eight eight, String atWallEnd) {

    static DancePlace at(Timeline timeline, double songSeconds) {
        Optional<DancedCount> last = timeline.ending().last();
        if (last.isPresent() && songSeconds >= timeline.endSeconds()) {
            return new DancePlace("The dance is over", "", "", "", "", Eight.none(), "");
        }
        return timeline.at(songSeconds)
                .map(count -> during(timeline, count))
                .orElseGet(() -> before(timeline, timeline.countOne(), songSeconds));
    }

    private static DancePlace during(Timeline timeline, DancedCount count) {
        Run run = count.run();
        return new DancePlace(
                name(timeline, run),
                Told.facing(count.facingAfter()),
                count.section().name(),
                count.section().heading(),
                count.count().label(),
                Eight.around(timeline, count),
                WallEnd.after(timeline, count));
    }

    /** While nothing is danced before a first count. */
    static DancePlace before(Timeline timeline, BeatPosition first, double songSeconds) {
        double beats = first.since(timeline.grid().positionAt(songSeconds)).toDecimal();
        double beatsACount = timeline.beatsOf(Counts.of(1)).toDecimal();
        int counts = Math.max(1, (int) Math.ceil(beats / beatsACount));
        return new DancePlace(
                "Starts in " + Told.number(Math.max(1, (long) Math.ceil(beats)), "beat"),
                "",
                "",
                "",
                "",
                Eight.before(counts, timeline.dance().header().metre().countsInSection()),
                WallEnd.first(timeline));
    }

    /** {@code Wall 2}, {@code Wall 2, part B}, {@code Tag after wall 2}, {@code Ending}. */
    public static String name(Timeline timeline, Run run) {
        return switch (run.kind()) {
            case WALL -> wall(timeline, run);
            case TAG -> "Tag after wall " + run.wall();
            case ENDING -> "Ending";
        };
    }

    private static String wall(Timeline timeline, Run run) {
        return "Wall " + run.wall()
                + (timeline.dance().isPhrased() ? ", part " + run.part().name() : "");
    }
}
