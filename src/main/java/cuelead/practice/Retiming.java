package cuelead.practice;

import cuelead.plan.DancedCount;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.practice.Steering.Course;
import cuelead.sound.Change;
import cuelead.time.SampleRate;
import cuelead.time.TimeMap;
import java.util.Optional;

/** Makes of a course the same course along another map: what is called, repeated and meant stays where it is in the song. */
final class Retiming {
    private final TakeMaker takes;
    private final SampleRate rate;
    private final TimeMap from;
    private final TimeMap to;

    private Retiming(TakeMaker takes, TimeMap from, TimeMap to) {
        this.takes = takes;
        rate = takes.rate();
        this.from = from;
        this.to = to;
    }

    /** From the map of a course to another. */
    static Retiming of(TakeMaker takes, Course course, TimeMap to) {
        return new Retiming(takes, course.manner().ground().map(), to);
    }

    /** Where what is heard at a time of the old map is heard on the new one. */
    double seconds(double seconds) {
        return to.outputAt(from.songAt(seconds * rate.hz())) / rate.hz();
    }

    private long frame(long frame) {
        return Math.round(to.outputAt(from.songAt((double) frame)));
    }

    /** The course, with its calls decided anew. */
    Course of(Course course) {
        return of(course, course.take().extent().earliestSeconds());
    }

    /** @param earliestSeconds the earliest that is called, on the old map */
    Course of(Course course, double earliestSeconds) {
        Manner manner = course.manner().with(course.manner().ground().along(to, rate));
        Timeline timeline = manner.ground().timeline();
        Extent extent = course.take().extent();
        Extent there = new Extent(extent.from(), extent.to(), seconds(earliestSeconds));
        Optional<DancedCount> aim = course.aim().flatMap(count -> same(count, timeline));
        Optional<Change.Loop> loop =
                course.loop().map(old -> new Change.Loop(frame(old.fromFrame()), frame(old.endFrame())));
        return new Course(takes.make(timeline, there, manner), manner, aim, loop);
    }

    /** The count on the same beat. */
    static Optional<DancedCount> same(DancedCount count, Timeline timeline) {
        return timeline.counts().stream()
                .filter(other -> other.at().equals(count.at()))
                .findFirst();
    }
}
