package cuelead.practice;

import cuelead.practice.Steering.Course;
import cuelead.practice.Steering.Place;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * What is heard and what will be, through pauses and lost devices: where the next order can begin, and how it takes
 * effect, on the way that is heard or from silence. Used on one thread.
 */
final class Underway {
    /** From an order to the first frame that it changes, so that it is planned before that frame is read. */
    private static final double PLANNING_SECONDS = 0.04;

    private final Outputs outputs;
    private final SampleRate rate;
    private final Steering steering;
    private boolean isPaused;

    /** Plays a first take from its beginning. */
    Underway(Outputs outputs, SampleRate rate, Manner manner, Take first) {
        this.outputs = outputs;
        this.rate = rate;
        Course course = new Course(first, manner, Optional.empty(), Optional.empty());
        steering = new Steering(outputs, rate, course, first.mix().fromFrame());
    }

    /** What leaves the speakers now. */
    Heard heard() {
        return steering.told();
    }

    boolean isPaused() {
        return isPaused;
    }

    /** Whether an order can be obeyed now: what was ordered before has begun. */
    boolean isReady() {
        return isStanding() || !steering.isUnderWay();
    }

    /** Whether nothing is heard that a change could lead on from. */
    boolean isStanding() {
        return isPaused || outputs.hasEnded();
    }

    void pause() {
        isPaused = true;
        outputs.pause();
    }

    /** Goes on with the beat that was heard last, or where a jump has been ordered to. */
    void resume() {
        beginWithHeardBeat();
        isPaused = false;
        outputs.resume();
    }

    /** The music joins in with the beat that is heard on the device of the calls. */
    void joinAfterLoss() {
        beginWithHeardBeat();
        if (!isPaused) {
            outputs.resume();
        }
    }

    private void beginWithHeardBeat() {
        double seconds = steering.isComingHeard() || steering.landing().isSameWay()
                ? rate.secondsAt(steering.heard().songFrame())
                : steering.landing().toSeconds();
        begin(coming(), grid().secondsAt(Landing.beatUntil(grid(), seconds)));
    }

    /** What is heard when all that was ordered is done. */
    Course coming() {
        return steering.coming();
    }

    /** The beats of that. */
    BeatGrid grid() {
        return coming().take().timeline().grid();
    }

    /** What is heard, or where the last jump has just led. */
    double placeSeconds() {
        Place place = steering.isComingHeard() ? steering.heard() : steering.next();
        return rate.secondsAt(place.songFrame());
    }

    /** What can be changed first, with the usual time to plan it. */
    double nextSeconds() {
        return nextSeconds(PLANNING_SECONDS);
    }

    /** What can be changed first, when the change is planned so soon. */
    double nextSeconds(double planningSeconds) {
        return isStanding()
                ? heard().songSeconds()
                : rate.secondsAt(steering.next().songFrame()) + planningSeconds;
    }

    /** What is heard now, counted back from {@link #nextSeconds()} on the same way. */
    double heardBeforeNextSeconds() {
        return isStanding() ? nextSeconds() : steering.heardBeforeNextSeconds();
    }

    /** When the last call that has begun at a time will have ended; that time if none has. */
    double begunUntilSeconds(double seconds) {
        return steering.begunUntilSeconds(seconds);
    }

    /** The first time from another on at which neither what is heard now nor a take says anything. */
    double quietFromSeconds(double seconds, Take take) {
        return steering.quietFromSeconds(seconds, take);
    }

    /** Goes over to a course, or begins with it where nothing is heard. */
    void goOver(Course course, Landing landing) {
        if (isStanding()) {
            begin(course, landing.toSeconds());
        } else {
            steering.goOver(course, landing);
        }
    }

    private void begin(Course course, double seconds) {
        long frame = rate.frameAt(seconds);
        Take take = course.take();
        boolean isRepeated = course.loop().isPresent();
        steering.begin(isRepeated ? course : course.with(take.with(take.mix().withoutClipsBefore(frame))), frame);
    }
}
