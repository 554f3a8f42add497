package cuelead.practice;

import cuelead.dance.CountOne;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.practice.Steering.Course;
import cuelead.practice.Steering.Place;
import cuelead.sound.Change;
import cuelead.sound.Levels;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Queue;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * A practice that is steered while it plays. Jumps land on a beat, eight counts before their section (six in waltz), in
 * which it is named, and counted in where its first calls leave time; beat follows beat. A call that has begun is heard
 * to its end, and what is called after a command is what would be called had the practice begun there.
 *
 * <p>Used on one thread, which plans for some hundredths of a second at each command; the audio thread never waits for
 * it. A command that comes before the one before it has begun is obeyed right after it, at the next {@link #tick}.
 */
public final class LivePractice {
    /** From a command to the first frame that it changes, so that it is planned before that frame is read. */
    private static final double PLANNING_SECONDS = 0.04;

    private final TakeMaker takes;
    private final Outputs outputs;
    private final SampleRate rate;
    private final Steering steering;
    private final Queue<Runnable> commands = new ArrayDeque<>();
    /** How the dance lay before each realignment that has not been taken back; the last first. */
    private final Deque<Ground> realigned = new ArrayDeque<>();

    private boolean isPaused;

    /** Which realignment has been taken back. */
    public enum TakenBack {
        /** The dance lies as the sheet says again. */
        THE_FIRST,
        A_LATER_ONE,
        /** There is none. */
        NOTHING
    }

    LivePractice(TakeMaker takes, Manner manner, Take first, Outputs outputs) {
        this.takes = takes;
        this.outputs = outputs;
        rate = takes.rate();
        Course course = new Course(first, manner, Optional.empty(), Optional.empty());
        steering = new Steering(outputs, rate, course, first.mix().fromFrame());
    }

    /** What leaves the speakers now. */
    public Heard heard() {
        Place place = steering.heard();
        Course course = place.course();
        double seconds = rate.secondsAt(place.songFrame());
        return new Heard(
                place.version(),
                seconds,
                course.take().timeline(),
                course.take().calls(),
                course.manner().calls(),
                course.loop().isPresent() ? Heard.Repeating.A_SECTION : Heard.Repeating.NOTHING,
                course.aim().filter(aim -> course.loop().isPresent() || seconds < aim.songSeconds()));
    }

    /**
     * To be called some times a second: obeys commands that had to wait, and keeps two outputs together.
     * While the device of the music is lost, that of the calls goes on; the music joins in with the beat that is heard
     * when it is back.
     */
    public void tick() {
        if (outputs.goOnAlone()) {
            joinAfterLoss();
        }
        outputs.keepTogether();
        while (!commands.isEmpty() && (isStanding() || !steering.isUnderWay())) {
            commands.remove().run();
        }
    }

    private void command(Runnable command) {
        commands.add(command);
        tick();
    }

    public boolean isPaused() {
        return isPaused;
    }

    /** Silence, until {@link #resume}; other commands are obeyed meanwhile. */
    public void pause() {
        isPaused = true;
        outputs.pause();
    }

    /** Goes on with the beat that was heard last, or where a jump has been ordered to. */
    public void resume() {
        command(() -> {
            beginWithHeardBeat();
            isPaused = false;
            outputs.resume();
        });
    }

    private void beginWithHeardBeat() {
        double seconds = steering.isComingHeard() || steering.landing().isSameWay()
                ? rate.secondsAt(steering.heard().songFrame())
                : steering.landing().toSeconds();
        begin(steering.coming(), grid().secondsAt(Landing.beatUntil(grid(), seconds)));
    }

    private void joinAfterLoss() {
        beginWithHeardBeat();
        if (!isPaused) {
            outputs.resume();
        }
    }

    /** Whether all has been heard. */
    public boolean hasEnded() {
        return outputs.hasEnded();
    }

    /**
     * From count 1 of the first wall; when that has yet to come, from the beginning of the song.
     *
     * @param told what comes of it, as soon as it is obeyed
     */
    public void fromTheTop(Consumer<Jump> told) {
        command(() -> sections().ifPresent(all -> go(all.toTheTop(placeSeconds()), told)));
    }

    /**
     * Jumps by sections.
     *
     * @param sections how many sections on; 0 = the one that is danced, from its beginning; below 0 = back
     * @param told     what comes of it, as soon as it is obeyed
     */
    public void jumpSections(int sections, Consumer<Jump> told) {
        command(() -> sections().ifPresent(all -> go(all.sectionsOn(meant(all), placeSeconds(), sections), told)));
    }

    /**
     * Jumps by walls.
     *
     * @param walls how many walls on; 0 = the one that is danced, from its beginning; below 0 = back
     * @param told  what comes of it, as soon as it is obeyed
     */
    public void jumpWalls(int walls, Consumer<Jump> told) {
        command(() -> sections().ifPresent(all -> go(all.wallsOn(meant(all), placeSeconds(), walls), told)));
    }

    private void go(Jump jump, Consumer<Jump> told) {
        switch (jump.way()) {
            case ON, BACK -> jumpTo(jump.aim());
            case SONG_BEGINNING -> jumpToBeginning();
            case NO_FURTHER -> {} // what is heard goes on
        }
        told.accept(jump);
    }

    /** Repeats the section that is danced, each time after its run-up. */
    public void loopSection() {
        command(() -> sections().ifPresent(this::loopSection));
    }

    /** Goes on after the repeated section. */
    public void leaveLoop() {
        command(() -> {
            Extent extent = steering.coming().take().extent();
            Extent onwards = new Extent(extent.from(), Optional.empty(), extent.earliestSeconds());
            goOn(
                    steering.coming().manner(),
                    steering.coming().take().timeline(),
                    onwards,
                    steering.coming().aim());
        });
    }

    /** Changes how calls are chosen. */
    public void calls(UnaryOperator<CallSettings> change) {
        manner(manner -> manner.with(change.apply(manner.calls())));
    }

    /** Every word again, in every wall. */
    public void allCallsBack() {
        calls(now -> new CallSettings(now.lead(), now.sectionLead(), CallLevel.WORDS, CallSettings.Fading.STEADY));
    }

    /** Changes how loud each part is, and how far the music goes down under the calls. */
    public void levels(UnaryOperator<Levels> change) {
        manner(manner -> manner.with(change.apply(manner.levels())));
    }

    /** Changes whether a click is heard over music. */
    public void click(Wish.Click click) {
        manner(manner -> manner.with(click));
    }

    /** How much later than the computer knows things are heard. */
    public Delays delays() {
        return outputs.delays();
    }

    /** Changes that: what is shown follows, and so do calls on a device of their own. */
    public void delays(Delays other) {
        outputs.delays(other);
    }

    private void manner(UnaryOperator<Manner> change) {
        command(() -> {
            Course now = steering.coming();
            goOn(change.apply(now.manner()), now.take().timeline(), now.take().extent(), now.aim());
        });
    }

    /** The beat that is heard now is count 1 of the first wall; the music plays on. */
    public void countOneIsNow() {
        double seconds = heard().songSeconds();
        realign(ground -> ground.from(new CountOne.AtSeconds(seconds)));
    }

    /** Moves the dance so much later against the music, which plays on; earlier when below zero. */
    public void moveDance(Beats later) {
        realign(ground -> ground.movedBy(later));
    }

    /** Moves the dance by the wall that is danced: 1 = the dancers are a wall behind, -1 = a wall ahead. */
    public void moveDanceByWall(int walls) {
        command(() -> sections().ifPresent(all -> {
            Beats length = all.wallLength(meant(all), -walls);
            Ground ground = steering.coming().manner().ground();
            realignNow(ground.movedBy(new Beats(walls * length.ticks())));
        }));
    }

    private void realign(UnaryOperator<Ground> change) {
        command(() -> realignNow(change.apply(steering.coming().manner().ground())));
    }

    /**
     * Takes the last realignment back that has not been; may be asked several times.
     *
     * @param told what comes of it, as soon as it is obeyed
     */
    public void takeRealignmentBack(Consumer<TakenBack> told) {
        command(() -> {
            if (realigned.isEmpty()) {
                told.accept(TakenBack.NOTHING);
                return;
            }
            layOn(realigned.pop());
            told.accept(realigned.isEmpty() ? TakenBack.THE_FIRST : TakenBack.A_LATER_ONE);
        });
    }

    private void realignNow(Ground ground) {
        realigned.push(steering.coming().manner().ground());
        layOn(ground);
    }

    private void layOn(Ground ground) {
        Timeline timeline = ground.timeline();
        // a section that was jumped to lies elsewhere now
        goOn(steering.coming().manner().with(ground), timeline, Extent.whole(timeline), Optional.empty());
    }

    /** The music plays on; calls are planned anew from the next beat on. */
    private void goOn(Manner manner, Timeline timeline, Extent extent, Optional<DancedCount> aim) {
        Course now = steering.coming();
        Landing landing = Landing.onTheWay(grid(), heardBeforeNextSeconds(), nextSeconds());
        double at = landing.atSeconds();
        double earliest = isStanding() ? at : Math.max(at, steering.begunUntilSeconds(at));
        Take take = takes.make(timeline, new Extent(extent.from(), extent.to(), earliest), manner);
        Optional<Change.Loop> loop = extent.to().isPresent() ? now.loop() : Optional.empty();
        goOver(new Course(take, manner, aim, loop), landing);
    }

    private void jumpTo(DancedCount start) {
        Course now = steering.coming();
        Timeline timeline = now.take().timeline();
        BeatPosition runUp = new Sections(timeline).runUpOf(start);
        Extent extent = new Extent(start.at(), Optional.empty(), grid().secondsAt(runUp));
        Take take = takes.make(timeline, extent, now.manner());
        goOver(new Course(take, now.manner(), Optional.of(start), Optional.empty()), landing(runUp));
    }

    /** To the first beat of the song, so that beat follows beat here, too. */
    private void jumpToBeginning() {
        Course now = steering.coming();
        Extent whole = Extent.whole(now.take().timeline());
        BeatPosition first = Landing.beatFrom(grid(), 0);
        double earliest = Math.max(grid().secondsAt(first), whole.earliestSeconds());
        Extent extent = new Extent(whole.from(), Optional.empty(), earliest);
        Take take = takes.make(now.take().timeline(), extent, now.manner());
        goOver(new Course(take, now.manner(), Optional.empty(), Optional.empty()), landing(first));
    }

    private void loopSection(Sections sections) {
        Course now = steering.coming();
        DancedCount start = meant(sections);
        BeatPosition runUp = inTheSong(sections.runUpOf(start));
        double from = grid().secondsAt(runUp);
        double end = grid().secondsAt(sections.endOf(start));
        if (end <= from) {
            return; // the section was over before the song began, so there is nothing to repeat
        }
        Extent extent = new Extent(start.at(), Optional.of(sections.endOf(start)), from);
        Take take = takes.make(now.take().timeline(), extent, now.manner());
        Change.Loop loop = new Change.Loop(rate.frameAt(from), rate.frameAt(end));
        double quiet = steering.quietFromSeconds(nextSeconds(), take);
        Landing landing = from <= quiet && quiet < end ? new Landing(quiet, quiet) : landing(runUp);
        goOver(new Course(take, now.manner(), Optional.of(start), Optional.of(loop)), landing);
    }

    /** A dance that was moved may begin before its song: then the song's first beat. */
    private BeatPosition inTheSong(BeatPosition wanted) {
        return grid().secondsAt(wanted) < 0 ? Landing.beatFrom(grid(), 0) : wanted;
    }

    private Landing landing(BeatPosition wanted) {
        return Landing.onBeat(grid(), heardBeforeNextSeconds(), nextSeconds(), wanted);
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
    private DancedCount meant(Sections sections) {
        Course now = steering.coming();
        double seconds = placeSeconds();
        return now.aim()
                .filter(aim -> seconds < aim.songSeconds() || now.loop().isPresent())
                .orElseGet(() -> sections.at(seconds));
    }

    /** What is heard, or where the last jump has just led. */
    private double placeSeconds() {
        Place place = steering.isComingHeard() ? steering.heard() : steering.next();
        return rate.secondsAt(place.songFrame());
    }

    private Optional<Sections> sections() {
        Timeline timeline = steering.coming().take().timeline();
        return timeline.counts().isEmpty() ? Optional.empty() : Optional.of(new Sections(timeline));
    }

    private BeatGrid grid() {
        return steering.coming().take().timeline().grid();
    }
}
