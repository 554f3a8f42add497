package cuelead.window.song;

import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.steer.DancePlace;
import cuelead.steer.Told;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A dance, beat by beat. */
final class DanceOnBeats {
    private final Timeline timeline;
    /** Whole counts; where two fall on one beat, the first. */
    private final Map<Integer, DancedCount> counts = new HashMap<>();

    private final Map<Integer, String> notes = new HashMap<>();

    DanceOnBeats(Timeline timeline) {
        this.timeline = timeline;
        timeline.counts().stream()
                .filter(count -> count.count().isWhole())
                .forEach(count -> counts.putIfAbsent(beat(count), count));
        for (Run run : timeline.runs()) {
            notes(run);
        }
        timeline.ending().last().ifPresent(last -> note(beat(last), end(last)));
    }

    private static int beat(DancedCount count) {
        return (int) count.at().beatIndex();
    }

    private void notes(Run run) {
        Optional<DancedCount> last = timeline.countsOf(run).stream()
                .filter(count -> count.count().isWhole())
                .reduce((one, other) -> other);
        if (run.restart().isPresent() && last.isPresent()) {
            note(
                    beat(last.get()),
                    "Restart: wall " + run.wall() + " is broken off after count "
                            + last.get().countInRun());
        }
        if (!run.isWall()) {
            note(
                    (int) run.start().beatIndex(),
                    DancePlace.name(timeline, run) + ", " + Told.number(run.counts(), "count"));
        }
    }

    private String end(DancedCount last) {
        return timeline.ending().isWhole()
                ? "The dance ends, facing " + Told.facing(timeline.ending().facing())
                : "The music ends on count " + last.countInRun() + " of this "
                        + (last.run().isWall() ? "wall" : "part");
    }

    private void note(int beat, String words) {
        notes.merge(beat, words, (one, other) -> one + ". " + other);
    }

    /** What is out of the ordinary on a beat; empty where nothing is. */
    Optional<String> note(int beat) {
        return Optional.ofNullable(notes.get(beat));
    }

    /** The count that begins on a beat. */
    Optional<DancedCount> on(int beat) {
        return Optional.ofNullable(counts.get(beat));
    }

    /** Before the first count, after the last, or between. */
    String outside(int beat) {
        return beat < timeline.countOne().beatIndex() ? "Intro" : "After the dance";
    }

    boolean opens(DancedCount count) {
        return count.countInRun() == 1;
    }

    /** {@code Wall 2, S1}; within a wall {@code S2}, within a section {@code S2 from 5}. */
    String place(DancedCount count) {
        String section = count.section().name();
        String within = count.isFirstOfSection()
                ? section
                : section + " from " + count.count().number();
        return opens(count)
                ? DancePlace.name(timeline, count.run()) + (count.run().isWall() ? ", " + section : "")
                : within;
    }

    /** What begins with a count: a wall, a tag, a section; empty where nothing does. */
    String begins(DancedCount count) {
        if (!count.isFirstOfSection()) {
            return "";
        }
        boolean isFirstOfRun = count.countInRun() == 1;
        return isFirstOfRun
                ? DancePlace.name(timeline, count.run())
                : count.section().name();
    }
}
