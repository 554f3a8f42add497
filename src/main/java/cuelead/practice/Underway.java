package cuelead.practice;

import cuelead.practice.Steering.Course;
import cuelead.practice.Steering.Place;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;

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

    /** Plays a first course from a frame of it on. */
    Underway(Outputs outputs, SampleRate rate, Course first, long fromFrame) {
        this.outputs = outputs;
        this.rate = rate;
        steering = new Steering(outputs, rate, first, fromFrame);
    }

    /** What leaves the speakers now. */
    Heard heard() {
        return steering.told();
    }

    /** Which of all orders is heard now; the first course has number 1. */
    int heardVersion() {
        return steering.heard().version();
    }

    /** Whether what was ordered last has yet to begin. */
    boolean isAwaited() {
        return steering.isUnderWay();
    }

    boolean isPaused() {
        return isPaused;
    }

    /** Whether an order can be obeyed now: what was ordered before has begun. */
    boolean isReady() {
        return isStanding() || !isAwaited();
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
        goOn();
    }

    /** Ends a pause, with what has been begun in it. */
    void goOn() {
        isPaused = false;
        outputs.resume();
    }

    /** The music joins in with the beat that is heard on the device of the calls. */
    void joinAfterLoss() {
        beginWithHeardBeat();
        soundUnlessPaused();
    }

    /** After a loss: what has been begun anew is heard, but in a pause. */
    void soundUnlessPaused() {
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
        begin(course, rate.frameAt(seconds));
    }

    /** Plays a course from a frame on, in place of all that is heard. */
    void begin(Course course, long frame) {
        Take take = course.take();
        boolean isRepeated = course.loop().isPresent();
        steering.begin(isRepeated ? course : course.with(take.with(take.mix().withoutClipsBefore(frame))), frame);
    }
}
