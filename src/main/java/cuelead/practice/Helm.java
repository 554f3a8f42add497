package cuelead.practice;

import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.practice.Steering.Course;
import cuelead.sound.Change;
import cuelead.sound.Levels;
import cuelead.sound.SlowedMusic;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.function.UnaryOperator;

/**
 * Makes of each order what is heard next, and decides at which beat it begins: on the way that is heard, or from
 * silence. Orders must come one at a time, when the {@link Underway} is ready. Used on one thread.
 */
final class Helm {
    /** A change of speed that takes longer to plan is planned again, with twice the time, until so much. */
    private static final double LONGEST_PLANNING_SECONDS = 0.2;

    private static final double SHORTEST_PLANNING_SECONDS = 0.025;
    /** Other calls of the same dance wait so long for a place where nothing is said. */
    private static final double LONGEST_WAIT_SECONDS = 1;

    private final TakeMaker takes;
    private final SampleRate rate;
    private final Underway way;
    /** Those at which nothing has been planned yet. */
    private final Queue<Speed> unmet = new ArrayDeque<>(List.of(Speed.SLOWEST, Speed.ORIGINAL, Speed.FASTEST));

    Helm(TakeMaker takes, Underway way) {
        this.takes = takes;
        this.way = way;
        rate = takes.rate();
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
        Course now = way.coming();
        Extent extent = now.take().extent();
        Extent onwards = new Extent(extent.from(), Optional.empty(), extent.earliestSeconds());
        goOn(now.manner(), now.take().timeline(), onwards, now.aim());
    }

    /** Changes how what is heard is played. */
    void change(UnaryOperator<Manner> change) {
        Course now = way.coming();
        goOn(change.apply(now.manner()), now.take().timeline(), now.take().extent(), now.aim());
    }

    /** Changes how loud each part is; what is called stays as it is. */
    void changeLevels(UnaryOperator<Levels> change) {
        Course now = way.coming();
        Manner manner = now.manner().with(change.apply(now.manner().levels()));
        Landing landing = Landing.onTheWay(way.grid(), way.heardBeforeNextSeconds(), way.nextSeconds());
        way.goOver(new Course(now.take().with(manner.levels()), manner, now.aim(), now.loop()), landing);
    }

    /**
     * Plans what nobody hears, so that the code that plans has been met when the first order comes. A piece of it at each
     * call, and nothing after the last.
     */
    void getReady() {
        if (!unmet.isEmpty()) {
            Retiming.of(takes, way.coming(), TimeMap.even(unmet.remove())).of(way.coming());
        }
    }

    /** Goes over to another speed; what is heard goes on where it is in the song. */
    void changeSpeed(Speed speed) {
        Course now = way.coming();
        TimeMap map = now.manner().ground().map();
        if (way.isStanding() || now.loop().isPresent() || !map.canTurnAt(turnFrame(way.nextSeconds()))) {
            Retiming anew = Retiming.of(takes, now, TimeMap.even(speed));
            double at = way.nextSeconds();
            way.goOver(anew.of(now), new Landing(at, anew.seconds(at)));
        } else {
            turn(now, map, speed, SHORTEST_PLANNING_SECONDS);
        }
    }

    /** A turn of the map that came too late would be a jump in the song. */
    private void turn(Course now, TimeMap map, Speed speed, double planningSeconds) {
        double at = way.nextSeconds(planningSeconds);
        double earliest = Math.max(at, way.begunUntilSeconds(at));
        Course turned = Retiming.of(takes, now, map.then(turnFrame(at), speed)).of(now, earliest);
        if (way.nextSeconds(0) > at && planningSeconds < LONGEST_PLANNING_SECONDS) {
            turn(now, map, speed, 2 * planningSeconds);
        } else {
            way.goOver(turned, new Landing(at, at));
        }
    }

    private long turnFrame(double atSeconds) {
        return rate.frameAt(atSeconds) + SlowedMusic.aheadFrames(rate);
    }

    /** How fast the song is played when all that was ordered is done. */
    Speed speed() {
        return way.coming().manner().ground().map().lastSpeed();
    }

    /** How calls are chosen where the song is at its own speed. */
    CallSettings calls() {
        return way.coming().manner().calls();
    }

    /** What is heard when all that was ordered is done, as if it had always been as fast as it is then. */
    private Course onEvenMap() {
        Course now = way.coming();
        TimeMap map = now.manner().ground().map();
        return map.isEven()
                ? now
                : Retiming.of(takes, now, TimeMap.even(map.lastSpeed())).of(now);
    }

    /** Moves the dance under the music. */
    void layOn(Ground laid) {
        Ground ground = laid.along(way.coming().manner().ground().map(), rate);
        Timeline timeline = ground.timeline();
        // a section that was jumped to lies elsewhere now
        goOn(way.coming().manner().with(ground), timeline, Extent.whole(timeline), Optional.empty());
    }

    /** What is heard goes on, with its calls planned anew: words have been spoken that had to be guessed. */
    void callAnew() {
        Course now = way.coming();
        Take take = takes.make(now.take().timeline(), now.take().extent(), now.manner())
                .endingLike(now.take());
        long soonest = rate.frameAt(way.nextSeconds());
        long latest = soonest + rate.frameAt(way.isStanding() ? 0 : LONGEST_WAIT_SECONDS);
        long end = now.loop().map(Change.Loop::endFrame).orElse(Long.MAX_VALUE);
        Handover handover = Handover.of(now.take(), take, soonest, Math.min(latest, end - 1));
        double at = rate.secondsAt(handover.fromFrame());
        way.goOver(new Course(handover.next(), now.manner(), now.aim(), now.loop()), new Landing(at, at));
    }

    /** The music plays on; calls are planned anew from the next beat on. */
    private void goOn(Manner manner, Timeline timeline, Extent extent, Optional<DancedCount> aim) {
        Course now = way.coming();
        Landing landing = Landing.onTheWay(way.grid(), way.heardBeforeNextSeconds(), way.nextSeconds());
        double at = landing.atSeconds();
        double earliest = way.isStanding() ? at : Math.max(at, way.begunUntilSeconds(at));
        Take take = takes.make(timeline, new Extent(extent.from(), extent.to(), earliest), manner);
        Optional<Change.Loop> loop = extent.to().isPresent() ? now.loop() : Optional.empty();
        way.goOver(new Course(take, manner, aim, loop), landing);
    }

    private void jumpTo(DancedCount start) {
        Course now = onEvenMap();
        Timeline timeline = now.take().timeline();
        Optional<DancedCount> aim = Retiming.same(start, timeline);
        double runUp = timeline.grid().secondsAt(new Sections(timeline).runUpOf(aim.orElse(start)));
        Take take = takes.make(timeline, new Extent(start.at(), Optional.empty(), runUp), now.manner());
        way.goOver(new Course(take, now.manner(), aim, Optional.empty()), landing(runUp));
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
        way.goOver(new Course(take, now.manner(), Optional.empty(), Optional.empty()), landing(first));
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
        boolean isAsHeard = way.coming().manner().ground().map().isEven();
        double left = isAsHeard ? way.quietFromSeconds(way.nextSeconds(), take) : way.nextSeconds();
        double quiet =
                Retiming.of(takes, way.coming(), now.manner().ground().map()).seconds(left);
        Landing landing = from <= quiet && quiet < end ? new Landing(left, quiet) : landing(from);
        Optional<DancedCount> aim = Retiming.same(start, now.take().timeline());
        way.goOver(new Course(take, now.manner(), aim, Optional.of(loop)), landing);
    }

    /** A dance that was moved may begin before its song: then the song's first beat. */
    private static BeatPosition inTheSong(BeatGrid grid, BeatPosition wanted) {
        return grid.secondsAt(wanted) < 0 ? Landing.beatFrom(grid, 0) : wanted;
    }

    private Landing landing(double wantedSeconds) {
        return Landing.onBeat(way.grid(), way.heardBeforeNextSeconds(), way.nextSeconds(), wantedSeconds);
    }

    /** The section that the user means: the one that is heard, or that he has just jumped to. */
    DancedCount meant(Sections sections) {
        Course now = way.coming();
        double seconds = way.placeSeconds();
        return now.aim()
                .filter(aim -> seconds < aim.songSeconds() || now.loop().isPresent())
                .orElseGet(() -> sections.at(seconds));
    }

    Optional<Sections> sections() {
        Timeline timeline = way.coming().take().timeline();
        return timeline.counts().isEmpty() ? Optional.empty() : Optional.of(new Sections(timeline));
    }
}
