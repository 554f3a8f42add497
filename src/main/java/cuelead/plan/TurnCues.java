package cuelead.plan;

import cuelead.dance.FigureRun;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.Beats;
import java.util.List;
import java.util.Optional;

/**
 * How the turns of a dance are called: with the name of their figure where that begins with the turn, is too quick for
 * words or is longer than its turn ("jazz box quarter right"); else at their own count ("step, quarter left").
 */
final class TurnCues {
    private TurnCues() {}

    /** What is called of turns for this count; empty where nothing turns, or it is told with another count. */
    static Optional<Cue> of(DancedCount count, CallLevel level, Beats lead) {
        Optional<FigureRun> named = namedWithItsTurn(count, level);
        if (named.isEmpty()) {
            return atItsCount(count, lead);
        }
        Step first = named.get().stepsOf(count.section()).get(0);
        if (!first.count().equals(count.count())) {
            return Optional.empty();
        }
        return Optional.of(new Cue(Kind.FIGURE, Need.TURN, count, FigureHeads.needed(named.get()), lead));
    }

    /** The figure of this count, where its name and its turn are one call. */
    static Optional<FigureRun> namedWithItsTurn(DancedCount count, CallLevel level) {
        return turningFigure(count)
                .filter(run -> level != CallLevel.WORDS || isOneCall(run.stepsOf(count.section())))
                .filter(run -> hasNoOwnCalls(count.section(), run));
    }

    /** The figure of this count, where it turns one way. */
    static Optional<FigureRun> turningFigure(DancedCount count) {
        return count.steps().stream()
                .findFirst()
                .flatMap(step -> StepWords.figureOf(count.section(), step))
                .filter(run -> !FigureHeads.turnOf(run).isNone());
    }

    private static boolean isOneCall(List<Step> steps) {
        boolean isQuick = steps.stream().anyMatch(step -> !step.count().isWhole());
        return steps.size() > 2 || isQuick || !steps.get(0).turn().isNone();
    }

    private static boolean hasNoOwnCalls(Section section, FigureRun run) {
        return run.stepsOf(section).stream()
                .noneMatch(step -> section.ownCalls().stream()
                        .anyMatch(call -> call.count().equals(step.count())));
    }

    /** The turn of this count, told whole on the first turning count of its figure. */
    private static Optional<Cue> atItsCount(DancedCount count, Beats lead) {
        return wordsAtItsCount(count).map(words -> new Cue(Kind.FIGURE, Need.TURN, count, Phrase.needed(words), lead));
    }

    /** What is said of it, fullest first. */
    static Optional<List<String>> wordsAtItsCount(DancedCount count) {
        Optional<Step> turning =
                count.steps().stream().filter(s -> !s.turn().isNone()).findFirst();
        if (turning.isEmpty()) {
            return Optional.empty();
        }
        Turn whole = Turn.NONE;
        for (Step step : sameWayInFigure(count.section(), turning.get())) {
            if (step.count().compareTo(count.count()) < 0) {
                return Optional.empty();
            }
            whole = whole.plus(step.turn());
        }
        return Optional.of(TurnWords.of(whole, count.facingBefore().after(whole)));
    }

    /** The steps of this step's figure that turn the same way, itself among them. */
    private static List<Step> sameWayInFigure(Section section, Step step) {
        return StepWords.figureOf(section, step).map(run -> run.stepsOf(section)).orElse(List.of(step)).stream()
                .filter(s -> Integer.signum(s.turn().degrees())
                        == Integer.signum(step.turn().degrees()))
                .toList();
    }
}
