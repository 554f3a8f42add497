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
import java.util.Collections;
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
    /** All passes of the lesson with every change of pace, also those that are not danced. */
    private final List<Pass> passes;
    /** The numbers of those that are danced, in order. */
    private final List<Integer> danced;
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
        danced = rounds.lesson().danced();
        Round first = firstOf(danced.get(0));
        ordered.add(first);
        way = new Underway(outputs, rate, course(first), first.fromFrame());
    }

    /**
     * Where the lesson is.
     *
     * @param pass        which pass, from 1
     * @param passes      how many the lesson has
     * @param wanted      it
     * @param repeat      which time, from 1
     * @param next        the pass after it; empty after the last
     * @param secondsLeft until all has been heard, if nothing is repeated or skipped
     */
    public record Now(int pass, int passes, Pass wanted, int repeat, Optional<Pass> next, double secondsLeft) {}

    /** What leaves the speakers now. */
    public Heard heard() {
        return way.heard();
    }

    /** The pass that leaves the speakers now. */
    public Now now() throws Refused {
        Round round = heardRound();
        double ofRound = rate.secondsAt(round.toFrame()) - heard().songSeconds();
        return new Now(
                round.pass(),
                passes.size(),
                round.wanted(),
                round.repeat(),
                numberAfter(round.pass()).map(this::pass),
                Math.max(0, ofRound) + secondsAfter(round));
    }

    private double secondsAfter(Round round) throws Refused {
        double seconds = rounds.seconds(round.pass(), round.wanted(), round.repeat() + 1);
        int later = danced.indexOf(round.pass()) + 1;
        for (int number : danced.subList(later, danced.size())) {
            seconds += rounds.seconds(number, pass(number), 1);
        }
        return seconds;
    }

    private Pass pass(int number) {
        return passes.get(number - 1);
    }

    private Optional<Integer> numberAfter(int number) {
        int next = danced.indexOf(number) + 1;
        return next < danced.size() ? Optional.of(danced.get(next)) : Optional.empty();
    }

    private Round heardRound() {
        return ordered.get(way.heardVersion() - 1);
    }

    /** The lesson with every change of pace that was made. */
    Lesson lesson() {
        return new Lesson(passes, danced);
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
        Optional<Integer> next = numberAfter(round.pass());
        return next.isPresent() ? Optional.of(firstOf(next.get())) : Optional.empty();
    }

    private Round firstOf(int number) throws Refused {
        return rounds.round(number, pass(number), 1);
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
        int meant = danced.indexOf(meant());
        int wanted = Math.max(0, Math.min(danced.size() - 1, meant + passes));
        if (wanted != meant || passes < 0) {
            want(firstOf(danced.get(wanted)));
        }
        return wanted != meant;
    }

    /**
     * This pass again, slower or faster; the passes behind it that were to be as fast as it become so, too.
     *
     * @param steps of a twentieth of full speed; below 0 = slower
     * @return the pace that it has now; empty where there is none so far, and it goes on
     */
    public Optional<Pace> again(int steps) throws Refused {
        Pace now = pass(meant()).pace();
        double ofFull = now.at(rounds.full()).beatsPerMinute() / rounds.full().beatsPerMinute();
        return againAt((Math.round(ofFull * PACE_STEPS) + steps) / PACE_STEPS);
    }

    /**
     * The same at a share of full speed.
     *
     * @param ofFull held within what a pace can be
     */
    public Optional<Pace> againAt(double ofFull) throws Refused {
        int number = meant();
        Pace before = pass(number).pace();
        Pace after = new Pace.Share(Math.max(Pace.Share.LEAST, Math.min(Pace.Share.MOST, ofFull)));
        List<Pass> fromHere = passes.subList(number - 1, passes.size());
        List<Pass> changed = fromHere.stream()
                .map(pass -> pass.pace().equals(before) ? pass.at(after) : pass)
                .toList();
        if (after.equals(before) || !changed.stream().allMatch(rounds::isPossible)) {
            return Optional.empty();
        }
        Collections.copy(fromHere, changed);
        want(firstOf(number));
        return Optional.of(after);
    }

    /** The pass that the user means: the one that is heard, or that he has ordered and not heard yet. */
    private int meant() {
        boolean isAskedHeard = way.heardVersion() >= asked;
        return wanted.map(Round::pass)
                .orElseGet(() -> isAskedHeard
                        ? heardRound().pass()
                        : ordered.get(asked - 1).pass());
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
