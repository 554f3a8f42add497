package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Figure;
import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import cuelead.dance.PivotCheck;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether a section's steps dance what its heading names. The steps win; a heading that names a kick where nobody
 * kicks, or a half turn where only a quarter is turned, is told. What a heading leaves out is no mistake.
 */
final class HeadingCheck {
    /** Sweeps and drags are left out: they are mostly told as the way of a step, "step back sweeping left". */
    private static final List<Set<Action>> FAMILIES = List.of(
            EnumSet.of(Action.KICK, Action.FLICK),
            EnumSet.of(Action.HITCH),
            EnumSet.of(Action.HOOK, Action.FLICK),
            EnumSet.of(Action.BRUSH, Action.SCUFF),
            EnumSet.of(Action.STOMP, Action.STOMPUP),
            EnumSet.of(Action.SWAY, Action.BUMP, Action.HIPROLL),
            EnumSet.of(Action.TOUCH, Action.TAP, Action.POINT, Action.HEEL, Action.TOE, Action.DIG, Action.CROSSTOUCH));

    private static final Set<Action> MARKED = EnumSet.of(Action.KICK, Action.FLICK, Action.HOOK, Action.STOMP);

    private final Problems problems;

    HeadingCheck(Problems problems) {
        this.problems = problems;
    }

    /** {@code line} is that of the heading. */
    void check(Section section, int line) {
        List<Phrase> phrases = LineFit.phrases(section.heading());
        long readable = phrases.stream().filter(Phrase::readable).count();
        boolean oneFigure =
                phrases.size() == 1 && readable == 1 && phrases.get(0).figure().isPresent();
        if (readable > 0) {
            checkTurns(section, phrases, line);
        }
        if (oneFigure || (readable > 1 && readable * 3 >= phrases.size() * 2L)) {
            checkFigures(section, phrases, line);
        }
    }

    private void checkFigures(Section section, List<Phrase> phrases, int line) {
        for (Phrase phrase : phrases) {
            phrase.action()
                    .map(Phrase.ActionCall::action)
                    .filter(action -> phrase.figure().isEmpty() && isMissing(action, section))
                    .ifPresent(action -> tell(section, line, "\"" + action.word() + "\""));
        }
        phrases.stream()
                .flatMap(phrase -> phrase.figure().stream())
                .map(call -> call.row().figure())
                .filter(figure -> isMissing(figure, section))
                .findFirst()
                .ifPresent(figure -> tell(section, line, "\"" + figure.name() + "\""));
        sideThatIsMissing(phrases, section)
                .ifPresent(call -> tell(
                        section,
                        line,
                        "\"" + call.row().figure().name() + "\" to the "
                                + call.feet().get(0).word()));
        HeadingFeet.notDanced(section, phrases)
                .ifPresent(named -> tell(
                        section,
                        line,
                        "\"" + named.name() + "\" from the " + named.foot().word() + " foot",
                        "it begins with the " + named.foot().other().word() + " one"));
    }

    private void checkTurns(Section section, List<Phrase> phrases, int line) {
        List<HeadingTurns.Named> named = HeadingTurns.named(section.heading(), phrases);
        boolean pivotIsTold = !PivotCheck.wrongWay(section.steps()).isEmpty();
        if (!pivotIsTold && !HeadingTurns.areTurned(named, section.steps())) {
            String turns = named.stream().map(HeadingTurns.Named::words).collect(Collectors.joining(", then "));
            tell(section, line, turns, named.size() == 1 ? LACKED : "its steps do not turn so");
        }
    }

    /** "Vine left, vine right" where first the right foot goes to its side, and the left one goes behind it. */
    private static Optional<Phrase.FigureCall> sideThatIsMissing(List<Phrase> phrases, Section section) {
        int from = 0;
        for (Phrase phrase : phrases) {
            Optional<Phrase.FigureCall> call = phrase.figure()
                    .filter(found -> found.feet().size() == 1
                            && found.turn().isEmpty()
                            && FigureShapes.goesToItsSide(found.row()));
            if (call.isPresent()) {
                FigureRow row = call.get().row();
                from = FigureShapes.begins(row, call.get().feet().get(0), section.steps(), from);
                if (from < 0) {
                    return call;
                }
            }
        }
        return Optional.empty();
    }

    /** Of a figure that is danced in several ways, such as a Charleston with touches, each way counts. */
    private static boolean isMissing(Figure named, Section section) {
        return Figures.standard().rows().stream()
                .map(FigureRow::figure)
                .filter(figure -> figure.id().equals(named.id()) || figure.id().startsWith(named.id() + "_"))
                .allMatch(figure -> FigureTraits.isForeign(figure, section.steps())
                        || FigureShapes.areMissing(figure, section.steps())
                        || lacksAKick(figure, section));
    }

    /** A kick within a figure is what it is known by: "kick ball change" where nobody kicks. */
    private static boolean lacksAKick(Figure figure, Section section) {
        return figure.pattern().stream()
                .map(Figure.Beat::action)
                .anyMatch(action -> MARKED.contains(action) && isMissing(action, section));
    }

    private static boolean isMissing(Action named, Section section) {
        List<Set<Action>> families =
                FAMILIES.stream().filter(family -> family.contains(named)).toList();
        return !families.isEmpty()
                && section.steps().stream()
                        .map(Step::action)
                        .noneMatch(action -> families.stream().anyMatch(family -> family.contains(action)));
    }

    private static final String LACKED = "its steps do not have it";

    private void tell(Section section, int line, String what) {
        tell(section, line, what, LACKED);
    }

    private void tell(Section section, int line, String what, String but) {
        problems.warning(
                "heading_mismatch",
                line,
                1,
                "The heading of " + section.name() + " names " + what + ", but " + but + ".",
                "Correct the heading or the steps; Cuelead reads the steps.");
    }
}
