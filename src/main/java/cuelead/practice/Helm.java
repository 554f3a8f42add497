package cuelead.practice;

import cuelead.plan.DancedCount;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.practice.Steering.Course;
import cuelead.practice.Steering.Place;
import cuelead.sound.Change;
import cuelead.sound.SlowedMusic;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Makes of each order what is heard next, and decides at which beat it begins: on the way that is heard, or from
 * silence. Orders must come one at a time, when {@link #isReady}. Used on one thread.
 */
final class Helm {
    /** From an order to the first frame that it changes, so that it is planned before that frame is read. */
    private static final double PLANNING_SECONDS = 0.04;

    private final TakeMaker takes;
    private final Outputs outputs;
    private final SampleRate rate;
    private final Steering steering;
    private boolean isPaused;

    Helm(TakeMaker takes, Manner manner, Take first, Outputs outputs) {
        this.takes = takes;
        this.outputs = outputs;
        rate = takes.rate();
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

    /** What is heard when all that was ordered is done. */
    Course coming() {
        return steering.coming();
    }

    private void beginWithHeardBeat() {
        double seconds = steering.isComingHeard() || steering.landing().isSameWay()
                ? rate.secondsAt(steering.heard().songFrame())
                : steering.landing().toSeconds();
        begin(coming(), grid().secondsAt(Landing.beatUntil(grid(), seconds)));
    }

    /** The music joins in with the beat that is heard on the device of the calls. */
    void joinAfterLoss() {
        beginWithHeardBeat();
        if (!isPaused) {
            outputs.resume();
        }
    }

    void go(Jump jump) {
        switch (jump.way()) {
            case ON, BACK -> jumpTo(jump.aim());
            case SONG_BEGINNING -> jumpToBeginning();
            case NO_FURTHER -> {} // what is heard goes on
        }
    }

    /** Goes on after the repeated section. */
    void leaveLoop() {
        Course now = coming();
        Extent extent = now.take().extent();
        Extent onwards = new Extent(extent.from(), Optional.empty(), extent.earliestSeconds());
        goOn(now.manner(), now.take().timeline(), onwards, now.aim());
    }

    /** Changes how what is heard is played. */
    void change(UnaryOperator<Manner> change) {
        Course now = coming();
        goOn(change.apply(now.manner()), now.take().timeline(), now.take().extent(), now.aim());
    }

    /** Goes over to another speed; what is heard goes on where it is in the song. */
    void changeSpeed(Speed speed) {
        Course now = coming();
        TimeMap map = now.manner().ground().map();
        double at = nextSeconds();
        long turn = rate.frameAt(at) + SlowedMusic.aheadFrames(rate);
        if (isStanding() || now.loop().isPresent() || !map.canTurnAt(turn)) {
            Retiming anew = Retiming.of(takes, now, TimeMap.even(speed));
            goOver(anew.of(now), new Landing(at, anew.seconds(at)));
        } else {
            double earliest = Math.max(at, steering.begunUntilSeconds(at));
            goOver(Retiming.of(takes, now, map.then(turn, speed)).of(now, earliest), new Landing(at, at));
        }
    }

    /** How fast the song is played when all that was ordered is done. */
    Speed speed() {
        return coming().manner().ground().map().lastSpeed();
    }

    /** What is heard when all that was ordered is done, as if it had always been as fast as it is then. */
    private Course onEvenMap() {
        Course now = coming();
        TimeMap map = now.manner().ground().map();
        return map.isEven()
                ? now
                : Retiming.of(takes, now, TimeMap.even(map.lastSpeed())).of(now);
    }

    /** Moves the dance under the music. */
    void layOn(Ground laid) {
        Ground ground = laid.along(coming().manner().ground().map(), rate);
        Timeline timeline = ground.timeline();
        // a section that was jumped to lies elsewhere now
        goOn(coming().manner().with(ground), timeline, Extent.whole(timeline), Optional.empty());
    }

    /** The music plays on; calls are planned anew from the next beat on. */
    private void goOn(Manner manner, Timeline timeline, Extent extent, Optional<DancedCount> aim) {
        Course now = coming();
        Landing landing = Landing.onTheWay(grid(), heardBeforeNextSeconds(), nextSeconds());
        double at = landing.atSeconds();
        double earliest = isStanding() ? at : Math.max(at, steering.begunUntilSeconds(at));
        Take take = takes.make(timeline, new Extent(extent.from(), extent.to(), earliest), manner);
        Optional<Change.Loop> loop = extent.to().isPresent() ? now.loop() : Optional.empty();
        goOver(new Course(take, manner, aim, loop), landing);
    }

    private void jumpTo(DancedCount start) {
        Course now = onEvenMap();
        Timeline timeline = now.take().timeline();
        Optional<DancedCount> aim = Retiming.same(start, timeline);
        double runUp = timeline.grid().secondsAt(new Sections(timeline).runUpOf(aim.orElse(start)));
        Take take = takes.make(timeline, new Extent(start.at(), Optional.empty(), runUp), now.manner());
        goOver(new Course(take, now.manner(), aim, Optional.empty()), landing(runUp));
    }

    /** To the first beat of the song, so that beat follows beat here, too. */
    private void jumpToBeginning() {
        Course now = onEvenMap();
        Extent whole = Extent.whole(now.take().timeline());
        BeatGrid there = now.take().timeline().grid();
        double first = there.secondsAt(Landing.beatFrom(there, 0));
        double earliest = Math.max(first, whole.earliestSeconds());
        Extent extent = new Extent(whole.from(), Optional.empty(), earliest);
        Take take = takes.make(now.take().timeline(), extent, now.manner());
        goOver(new Course(take, now.manner(), Optional.empty(), Optional.empty()), landing(first));
    }

    void loopSection(Sections sections) {
        Course now = onEvenMap();
        BeatGrid there = now.take().timeline().grid();
        DancedCount start = meant(sections);
        BeatPosition runUp = inTheSong(there, sections.runUpOf(start));
        double from = there.secondsAt(runUp);
        double end = there.secondsAt(sections.endOf(start));
        if (end <= from) {
            return; // the section was over before the song began, so there is nothing to repeat
        }
        Extent extent = new Extent(start.at(), Optional.of(sections.endOf(start)), from);
        Take take = takes.make(now.take().timeline(), extent, now.manner());
        Change.Loop loop = new Change.Loop(rate.frameAt(from), rate.frameAt(end));
        boolean isAsHeard = coming().manner().ground().map().isEven();
        double left = isAsHeard ? steering.quietFromSeconds(nextSeconds(), take) : nextSeconds();
        double quiet = Retiming.of(takes, coming(), now.manner().ground().map()).seconds(left);
        Landing landing = from <= quiet && quiet < end ? new Landing(left, quiet) : landing(from);
        Optional<DancedCount> aim = Retiming.same(start, now.take().timeline());
        goOver(new Course(take, now.manner(), aim, Optional.of(loop)), landing);
    }

    /** A dance that was moved may begin before its song: then the song's first beat. */
    private static BeatPosition inTheSong(BeatGrid grid, BeatPosition wanted) {
        return grid.secondsAt(wanted) < 0 ? Landing.beatFrom(grid, 0) : wanted;
    }

    private Landing landing(double wantedSeconds) {
        return Landing.onBeat(grid(), heardBeforeNextSeconds(), nextSeconds(), wantedSeconds);
    }

    private void goOver(Course course, Landing landing) {
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

    /** Whether nothing is heard that a change could lead on from. */
    private boolean isStanding() {
        return isPaused || outputs.hasEnded();
    }

    private double nextSeconds() {
        return isStanding()
                ? heard().songSeconds()
                : rate.secondsAt(steering.next().songFrame()) + PLANNING_SECONDS;
    }

    private double heardBeforeNextSeconds() {
        return isStanding() ? nextSeconds() : steering.heardBeforeNextSeconds();
    }

    /** The section that the user means: the one that is heard, or that he has just jumped to. */
    DancedCount meant(Sections sections) {
        Course now = coming();
        double seconds = placeSeconds();
        return now.aim()
                .filter(aim -> seconds < aim.songSeconds() || now.loop().isPresent())
                .orElseGet(() -> sections.at(seconds));
    }

    /** What is heard, or where the last jump has just led. */
    double placeSeconds() {
        Place place = steering.isComingHeard() ? steering.heard() : steering.next();
        return rate.secondsAt(place.songFrame());
    }

    Optional<Sections> sections() {
        Timeline timeline = coming().take().timeline();
        return timeline.counts().isEmpty() ? Optional.empty() : Optional.of(new Sections(timeline));
    }

    private BeatGrid grid() {
        return coming().take().timeline().grid();
    }
}
