package cuelead.practice;

import cuelead.plan.DancedCount;
import cuelead.sound.Change;
import cuelead.sound.MixPlan;
import cuelead.sound.PlacedClip;
import cuelead.sound.Route;
import cuelead.time.SampleRate;
import cuelead.time.TimeMap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Takes what is heard from one take to the next. Knows which take is heard, which is about to be, and where in the song
 * each of them is. Used on one thread.
 */
final class Steering {
    private final Outputs outputs;
    private final SampleRate rate;
    private final Map<Integer, Course> courses = new HashMap<>();
    private int newest;
    private Landing landing;

    /**
     * A take on its way to the speakers.
     *
     * @param take   what is heard
     * @param manner how it was wished
     * @param aim    the section that is meant, also while its run-up is heard; empty = the one that is danced
     * @param loop   what of it is repeated
     */
    record Course(Take take, Manner manner, Optional<DancedCount> aim, Optional<Change.Loop> loop) {
        Course with(Take other) {
            return new Course(other, manner, aim, loop);
        }
    }

    /**
     * A place on the way.
     *
     * @param version   number of the change that led there
     * @param course    what is heard there
     * @param songFrame the place in the song
     */
    record Place(int version, Course course, long songFrame) {}

    Steering(Outputs outputs, SampleRate rate, Course first, long startFrame) {
        this.outputs = outputs;
        this.rate = rate;
        begin(first, startFrame);
    }

    /** Plays a course from a frame on, in place of all that is heard; stays paused if it is. */
    void begin(Course course, long startFrame) {
        newest++;
        landing = new Landing(rate.secondsAt(startFrame), rate.secondsAt(startFrame));
        courses.put(newest, course);
        outputs.begin(newest, course.take().mix(), startFrame, course.loop());
    }

    /** What leaves the speakers now. */
    Place heard() {
        long output = outputs.heardFrame();
        return place(outputs.route().pieceAt(output), output);
    }

    /** The same as it is told. */
    Heard told() {
        Place place = heard();
        Course course = place.course();
        double seconds = rate.secondsAt(place.songFrame());
        boolean isRepeated = course.loop().isPresent();
        return new Heard(
                place.version(),
                seconds,
                course.take().timeline(),
                course.take().heardCalls(),
                course.take().plan().settings(),
                isRepeated ? Heard.Repeating.A_SECTION : Heard.Repeating.NOTHING,
                course.aim().filter(aim -> isRepeated || seconds < aim.songSeconds()),
                clock(course, seconds));
    }

    private Heard.SongClock clock(Course course, double seconds) {
        TimeMap map = course.manner().ground().map();
        double end = course.take().timeline().endSeconds();
        return new Heard.SongClock(
                map.songAt(seconds * rate.hz()) / rate.hz(), map.songAt(end * rate.hz()) / rate.hz());
    }

    /** What can be changed first, if nothing that was ordered comes before. */
    Place next() {
        Route.Piece last = outputs.route().last();
        return new Place(last.change(), courses.get(last.change()), outputs.nextFrame());
    }

    /** What is heard now, counted back from {@link #next} on the same way. */
    double heardBeforeNextSeconds() {
        Route.Piece last = outputs.route().last();
        long nextOutput = last.outputFrame() + outputs.nextFrame() - last.songFrame();
        return rate.secondsAt(outputs.nextFrame() - (nextOutput - outputs.leavingFrame()));
    }

    private Place place(Route.Piece piece, long output) {
        return new Place(piece.change(), courses.get(piece.change()), piece.songFrameAt(output));
    }

    /** What is heard when all that was ordered is done. */
    Course coming() {
        return courses.get(newest);
    }

    /** Whether what was ordered last is heard. */
    boolean isComingHeard() {
        return heard().version() == newest;
    }

    /** Where what was ordered last begins. */
    Landing landing() {
        return landing;
    }

    /** Whether what was ordered last has yet to begin; until then nothing else can be ordered. */
    boolean isUnderWay() {
        return outputs.route().last().change() != newest;
    }

    /** Orders a change of course; a call that has begun where it leaves is heard to its end. */
    void goOver(Course course, Landing where) {
        Place left = next();
        landing = where;
        long at = rate.frameAt(where.atSeconds());
        long to = rate.frameAt(where.toSeconds());
        MixPlan wanted = course.take().mix();
        // what is repeated is heard from its beginning later, and begins where nothing is said
        MixPlan kept = course.loop().isPresent()
                ? wanted
                : withBegunCalls(left.course().take().mix(), at, wanted, to);
        newest++;
        courses.put(newest, course.with(course.take().with(kept)));
        outputs.change(new Change(newest, at, kept, to, course.loop()));
    }

    /** When the last call that has begun at a time will have ended; that time if none has. */
    double begunUntilSeconds(double seconds) {
        long at = rate.frameAt(seconds);
        return begun(next().course().take().mix(), at)
                .mapToLong(PlacedClip::endFrame)
                .mapToDouble(rate::secondsAt)
                .max()
                .orElse(seconds);
    }

    /** The first time from another on at which neither what is heard now nor a take says anything. */
    double quietFromSeconds(double seconds, Take take) {
        long at = rate.frameAt(seconds);
        long before;
        do {
            before = at;
            for (MixPlan plan : List.of(next().course().take().mix(), take.mix())) {
                at = Math.max(
                        at,
                        begun(plan, at + 1)
                                .mapToLong(PlacedClip::endFrame)
                                .max()
                                .orElse(at));
            }
        } while (at > before);
        return rate.secondsAt(at);
    }

    private static MixPlan withBegunCalls(MixPlan from, long at, MixPlan other, long to) {
        List<PlacedClip> clips = new ArrayList<>();
        begun(from, at)
                .map(clip -> new PlacedClip(
                        clip.startFrame() + to - at, clip.mono(), clip.audibleFrom(), clip.audibleTo(), clip.gainDb()))
                .forEach(clips::add);
        long free = clips.stream().mapToLong(PlacedClip::audibleEndFrame).max().orElse(Long.MIN_VALUE);
        other.clips().stream()
                .filter(clip -> clip.startFrame() >= to && clip.audibleStartFrame() >= free)
                .forEach(clips::add);
        return other.withClips(clips);
    }

    private static Stream<PlacedClip> begun(MixPlan plan, long at) {
        return plan.clips().stream().filter(clip -> clip.startFrame() < at && clip.endFrame() > at);
    }
}
