package cuelead.practice;

import cuelead.lesson.Lesson;
import cuelead.lesson.Pace;
import cuelead.lesson.Pass;
import cuelead.plan.Timeline;
import cuelead.practice.Steering.Course;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lesson that is danced: pass follows pass by itself, and the user may repeat one, also slower or faster, go back or
 * skip, at any moment and on the beat. Used on one thread, which makes each round before it is needed; the audio thread
 * never waits for it.
 */
public final class LiveWalkthrough {
    /** The next round is ordered so long before it begins; until it has begun, orders wait. */
    private static final double ORDERED_AHEAD_SECONDS = 0.25;
    /** A pass is made slower or faster by a twentieth of full speed at a time. */
    private static final double PACE_STEPS = 20;

    private final Rounds rounds;
    private final Outputs outputs;
    private final SampleRate rate;
    private final Underway way;
    private final List<Pass> passes;
    /** The round of each version of what is heard; the first has number 1. */
    private final List<Round> ordered = new ArrayList<>();

    private Optional<Round> prepared = Optional.empty();
    private Optional<Round> wanted = Optional.empty();
    /** The version that the user has ordered last. */
    private int asked;

    LiveWalkthrough(Rounds rounds, Outputs outputs) throws Refused {
        this.rounds = rounds;
        this.outputs = outputs;
        rate = rounds.rate();
        passes = new ArrayList<>(rounds.lesson().passes());
        Round first = rounds.round(1, passes.get(0), 1);
        ordered.add(first);
        way = new Underway(outputs, rate, course(first), first.fromFrame());
    }

    /**
     * Where the lesson is.
     *
     * @param pass    which pass, from 1
     * @param passes  how many there are
     * @param wanted  it
     * @param repeat  which time, from 1
     */
    public record Now(int pass, int passes, Pass wanted, int repeat) {}

    /** What leaves the speakers now. */
    public Heard heard() {
        return way.heard();
    }

    /** The pass that leaves the speakers now. */
    public Now now() {
        Round round = heardRound();
        return new Now(round.pass(), passes.size(), round.wanted(), round.repeat());
    }

    private Round heardRound() {
        return ordered.get(way.heardVersion() - 1);
    }

    /** The lesson with every change of pace that was made. */
    public Lesson lesson() {
        return new Lesson(passes);
    }

    /** To be called some times a second: makes and orders the next round, and obeys an order that had to wait. */
    public void tick() throws Refused {
        if (outputs.goOnAlone()) {
            beginAgain();
            way.soundUnlessPaused();
        }
        outputs.keepTogether();
        if (!way.isReady()) {
            return;
        }
        if (wanted.isPresent()) {
            Round round = wanted.get();
            wanted = Optional.empty();
            goTo(round);
        } else if (!way.isStanding()) {
            lead();
        }
    }

    private void lead() throws Refused {
        Round last = last();
        if (prepared.isEmpty()) {
            prepared = after(last);
        }
        long left = last.toFrame() - rate.frameAt(way.nextSeconds());
        if (prepared.isPresent() && left <= rate.frameAt(ORDERED_AHEAD_SECONDS)) {
            order(
                    prepared.get(),
                    new Landing(
                            rate.secondsAt(last.toFrame()),
                            rate.secondsAt(prepared.get().fromFrame())));
        }
    }

    private Round last() {
        return ordered.get(ordered.size() - 1);
    }

    private Optional<Round> after(Round round) throws Refused {
        if (!round.isLastOfPass()) {
            return Optional.of(rounds.round(round.pass(), round.wanted(), round.repeat() + 1));
        }
        return round.pass() < passes.size() ? Optional.of(firstOf(round.pass() + 1)) : Optional.empty();
    }

    private Round firstOf(int pass) throws Refused {
        return rounds.round(pass, passes.get(pass - 1), 1);
    }

    public boolean isPaused() {
        return way.isPaused();
    }

    /** Silence, until {@link #resume}; other orders are obeyed meanwhile. */
    public void pause() {
        way.pause();
    }

    /** Goes on with the run-up of the round that was heard: in the middle nobody would know where to step. */
    public void resume() {
        beginAgain();
        way.goOn();
    }

    private void beginAgain() {
        begin(way.isAwaited() ? last() : heardRound());
    }

    /** Whether all has been heard. */
    public boolean hasEnded() {
        return outputs.hasEnded();
    }

    /** How much later than the computer knows things are heard. */
    public Delays delays() {
        return outputs.delays();
    }

    /** Changes that: what is shown follows. */
    public void delays(Delays other) {
        outputs.delays(other);
    }

    /** This pass again, from its first time. */
    public void again() throws Refused {
        want(firstOf(meant()));
    }

    /**
     * Another pass.
     *
     * @param passes how many on; below 0 = back. Held within the lesson
     * @return whether there is one so far on
     */
    public boolean skip(int passes) throws Refused {
        int pass = Math.max(1, Math.min(this.passes.size(), meant() + passes));
        boolean isAnother = pass != meant();
        if (isAnother || passes < 0) {
            want(firstOf(pass));
        }
        return isAnother;
    }

    /**
     * This pass again, slower or faster; the passes behind it that were to be as fast as it become so, too.
     *
     * @param steps of a twentieth of full speed; below 0 = slower
     * @return the pace that it has now; empty where there is none so far, and it goes on
     */
    public Optional<Pace> again(int steps) throws Refused {
        int pass = meant();
        Pace before = passes.get(pass - 1).pace();
        Pace after = stepped(before, steps);
        if (after.equals(before)) {
            return Optional.empty();
        }
        List<Pass> fromHere = passes.subList(pass - 1, passes.size());
        fromHere.replaceAll(other -> other.pace().equals(before) ? other.at(after) : other);
        want(firstOf(pass));
        return Optional.of(after);
    }

    private Pace stepped(Pace pace, int steps) {
        double ofFull = pace.at(rounds.full()).beatsPerMinute() / rounds.full().beatsPerMinute();
        double stepped = (Math.round(ofFull * PACE_STEPS) + steps) / PACE_STEPS;
        return new Pace.Share(Math.max(Pace.Share.LEAST, Math.min(Pace.Share.MOST, stepped)));
    }

    /** The pass that the user means: the one that is heard, or that he has ordered and not heard yet. */
    private int meant() {
        boolean isAskedHeard = way.heardVersion() >= asked;
        return wanted.map(Round::pass)
                .orElseGet(() ->
                        isAskedHeard ? now().pass() : ordered.get(asked - 1).pass());
    }

    private void want(Round round) throws Refused {
        wanted = Optional.of(round);
        tick();
    }

    private void goTo(Round round) {
        asked = ordered.size() + 1;
        if (way.isStanding()) {
            begin(round);
            return;
        }
        Timeline heard = last().take().timeline();
        BeatGrid grid = heard.grid();
        Landing landing = Landing.onBeat(grid, way.heardBeforeNextSeconds(), way.nextSeconds(), round.beatSeconds());
        order(round, landing);
    }

    private void order(Round round, Landing landing) {
        ordered.add(round);
        prepared = Optional.empty();
        way.goOver(course(round), landing);
    }

    private void begin(Round round) {
        ordered.add(round);
        prepared = Optional.empty();
        way.begin(course(round), round.fromFrame());
    }

    private static Course course(Round round) {
        Take take = round.take();
        return new Course(take, round.manner(), take.extent().first(take.timeline()), Optional.empty());
    }
}
