package cuelead.practice;

import cuelead.dance.CountOne;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.Steering.Course;
import cuelead.report.Refused;
import cuelead.sound.Levels;
import cuelead.time.Beats;
import cuelead.time.Speed;
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
    private final Outputs outputs;
    private final Underway way;
    private final Helm helm;
    private final CatchingUp catchingUp;
    private final Queue<Runnable> commands = new ArrayDeque<>();
    /** How the dance lay before each realignment that has not been taken back; the last first. */
    private final Deque<Ground> realigned = new ArrayDeque<>();

    /** Which realignment has been taken back. */
    public enum TakenBack {
        /** The dance lies as the sheet says again. */
        THE_FIRST,
        A_LATER_ONE,
        /** There is none. */
        NOTHING
    }

    LivePractice(TakeMaker takes, Manner manner, Take first, Outputs outputs, CatchingUp catchingUp) {
        this.outputs = outputs;
        this.catchingUp = catchingUp;
        Course course = new Course(first, manner, Optional.empty(), Optional.empty());
        way = new Underway(outputs, takes.rate(), course, first.mix().fromFrame());
        helm = new Helm(takes, way);
    }

    /**
     * So that the first command is obeyed as soon as later ones. To be called a few times while it plays; takes up to some
     * tenths of a second each time, and does nothing when all is done.
     */
    public void getReady() {
        helm.getReady();
    }

    /** What leaves the speakers now. */
    public Heard heard() {
        return way.heard();
    }

    /**
     * To be called some times a second: obeys commands that had to wait, and keeps two outputs together.
     * While the device of the music is lost, that of the calls goes on; the music joins in with the beat that is heard
     * when it is back.
     */
    public void tick() {
        if (outputs.goOnAlone()) {
            way.joinAfterLoss();
        }
        outputs.keepTogether();
        while (!commands.isEmpty() && way.isReady()) {
            commands.remove().run();
        }
        if (commands.isEmpty() && way.isReady() && !outputs.hasEnded()) {
            catchingUp.goOn(way, helm);
        }
    }

    /** Throws what was found wrong with the song or the voice while it plays, if anything was. */
    public void check() throws Refused {
        catchingUp.check();
    }

    private void command(Runnable command) {
        commands.add(command);
        tick();
    }

    public boolean isPaused() {
        return way.isPaused();
    }

    /** Silence, until {@link #resume}; other commands are obeyed meanwhile. */
    public void pause() {
        way.pause();
    }

    /** Goes on with the beat that was heard last, or where a jump has been ordered to. */
    public void resume() {
        command(way::resume);
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
        command(() -> helm.sections().ifPresent(all -> go(all.toTheTop(way.placeSeconds()), told)));
    }

    /**
     * Jumps by sections.
     *
     * @param sections how many sections on; 0 = the one that is danced, from its beginning; below 0 = back
     * @param told     what comes of it, as soon as it is obeyed
     */
    public void jumpSections(int sections, Consumer<Jump> told) {
        command(() -> helm.sections()
                .ifPresent(all -> go(all.sectionsOn(helm.meant(all), way.placeSeconds(), sections), told)));
    }

    /**
     * Jumps by walls.
     *
     * @param walls how many walls on; 0 = the one that is danced, from its beginning; below 0 = back
     * @param told  what comes of it, as soon as it is obeyed
     */
    public void jumpWalls(int walls, Consumer<Jump> told) {
        command(() ->
                helm.sections().ifPresent(all -> go(all.wallsOn(helm.meant(all), way.placeSeconds(), walls), told)));
    }

    private void go(Jump jump, Consumer<Jump> told) {
        helm.go(jump);
        told.accept(jump);
    }

    /** Repeats the section that is danced, each time after its run-up. */
    public void loopSection() {
        command(() -> helm.sections().ifPresent(helm::loopSection));
    }

    /** Goes on after the repeated section. */
    public void leaveLoop() {
        command(helm::leaveLoop);
    }

    /** How calls are chosen when all that was ordered is done; the lead is that of the song's own speed. */
    public CallSettings calls() {
        return helm.calls();
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

    /** Plays the song slower or faster from some tenths of a second on, at its own pitch. */
    public void speed(Speed speed) {
        command(() -> helm.changeSpeed(speed));
    }

    /** How fast the song is played when all that was ordered is done. */
    public Speed speed() {
        return helm.speed();
    }

    private void manner(UnaryOperator<Manner> change) {
        command(() -> helm.change(change));
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

    /**
     * Moves the dance by the wall that is danced.
     *
     * @param walls 1 = the dancers are a wall behind, -1 = a wall ahead
     * @param told  what comes of it, as soon as it is obeyed
     */
    public void moveDanceByWall(int walls, Consumer<MovedWall> told) {
        command(() -> {
            Optional<Ground> moved = helm.sections().map(all -> {
                Beats length = all.wallLength(helm.meant(all), -walls);
                return way.coming().manner().ground().movedBy(new Beats(walls * length.ticks()));
            });
            boolean isDanced = moved.filter(
                            ground -> !ground.timeline().counts().isEmpty())
                    .isPresent();
            if (isDanced) {
                realignNow(moved.get());
            }
            told.accept(isDanced ? MovedWall.MOVED : MovedWall.NONE_LEFT);
        });
    }

    private void realign(UnaryOperator<Ground> change) {
        command(() -> realignNow(change.apply(way.coming().manner().ground())));
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
            helm.layOn(realigned.pop());
            told.accept(realigned.isEmpty() ? TakenBack.THE_FIRST : TakenBack.A_LATER_ONE);
        });
    }

    private void realignNow(Ground ground) {
        realigned.push(way.coming().manner().ground());
        helm.layOn(ground);
    }
}
