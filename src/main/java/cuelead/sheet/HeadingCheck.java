package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Figure;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Whether a section's steps dance what its heading names. The steps win; a heading that names a kick where nobody
 * kicks, or a half turn where only a quarter is turned, is told. What a heading leaves out is no mistake.
 */
final class HeadingCheck {
    private static final List<Set<Action>> FAMILIES = List.of(
            EnumSet.of(Action.KICK, Action.FLICK),
            EnumSet.of(Action.HITCH),
            EnumSet.of(Action.HOOK, Action.FLICK),
            EnumSet.of(Action.BRUSH, Action.SCUFF, Action.SWEEP),
            EnumSet.of(Action.STOMP, Action.STOMPUP),
            EnumSet.of(Action.DRAG, Action.SLIDE),
            EnumSet.of(Action.SWAY, Action.BUMP, Action.HIPROLL),
            EnumSet.of(Action.TOUCH, Action.TAP, Action.POINT, Action.HEEL, Action.TOE, Action.DIG, Action.CROSSTOUCH));
    private static final Set<Action> MARKED = EnumSet.of(Action.KICK, Action.FLICK, Action.HOOK, Action.STOMP);
    private static final Set<String> WHOLE_TURNS = Set.of("rolling_vine", "three_step_turn");
    private static final Set<String> NO_TURNS = Set.of("rumba", "charleston", "k");

    private final Problems problems;

    HeadingCheck(Problems problems) {
        this.problems = problems;
    }

    /** {@code line} is that of the heading. */
    void check(Section section, int line) {
        List<Phrase> phrases = LineFit.phrases(section.heading(), 0);
        long readable = phrases.stream().filter(Phrase::readable).count();
        if (readable < 2 || readable * 3 < phrases.size() * 2L) {
            return;
        }
        for (Phrase phrase : phrases) {
            phrase.action()
                    .map(Phrase.ActionCall::action)
                    .filter(action -> phrase.figure().isEmpty() && isMissing(action, section))
                    .ifPresent(action -> tell(section, line, "\"" + action.word() + "\""));
        }
        phrases.stream()
                .flatMap(phrase -> phrase.figure().stream())
                .map(call -> call.row().figure())
                .filter(figure -> FigureTraits.isForeign(figure, section.steps()) || lacksAKick(figure, section))
                .findFirst()
                .ifPresent(figure -> tell(section, line, "\"" + figure.name() + "\""));
        List<Integer> named = turns(section.heading(), phrases);
        if (!named.isEmpty() && !isTurned(named, section.steps())) {
            tell(section, line, named.size() == 1 ? amount(named.get(0)) : "these turns");
        }
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

    /** The turns that the heading tells in figures, in degrees, in its order. */
    private static List<Integer> turns(String heading, List<Phrase> phrases) {
        List<Integer> turns = new ArrayList<>();
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(heading));
        boolean stands = false;
        int clauseStart = 0;
        for (Term term : terms) {
            stands = !term.is(Kind.SEPARATOR) && (stands || NO_TURNS.contains(term.meaning()));
            if (term.is(Kind.SEPARATOR)) {
                clauseStart = turns.size();
            }
            OptionalInt degrees = term.is(Kind.FRACTION) ? TermCursor.degrees(term.meaning()) : OptionalInt.empty();
            if (degrees.isPresent() && !stands) {
                turns.add(degrees.getAsInt());
            }
            boolean twice = term.is(Kind.NUMBER, "2") && !term.text().equals("2") && turns.size() > clauseStart;
            if (twice) {
                turns.add(turns.get(turns.size() - 1));
            }
        }
        boolean whole = phrases.stream()
                .flatMap(phrase -> phrase.figure().stream())
                .anyMatch(call -> WHOLE_TURNS.contains(call.row().figure().id()));
        return turns.isEmpty() && whole ? List.of(360) : turns;
    }

    /** Whether these turns come in this order, each as a step's own turn or as the sum of some that follow each other. */
    private static boolean isTurned(List<Integer> named, List<Step> steps) {
        List<Integer> turned = steps.stream()
                .map(Step::turn)
                .filter(turn -> !turn.isNone())
                .map(Turn::degrees)
                .toList();
        int from = 0;
        for (int degrees : named) {
            int end = end(turned, from, degrees);
            if (end < 0) {
                return false;
            }
            from = end;
        }
        return true;
    }

    /** Index behind the first run of turns from {@code from} on that adds up to so many degrees; -1 where none does. */
    private static int end(List<Integer> turned, int from, int degrees) {
        int best = -1;
        for (int start = from; start < turned.size(); start++) {
            int sum = 0;
            for (int end = start; end < turned.size(); end++) {
                sum += turned.get(end);
                if (Math.abs(sum) == degrees && (best < 0 || end + 1 < best)) {
                    best = end + 1;
                }
            }
        }
        return best;
    }

    private static String amount(int degrees) {
        return switch (degrees) {
            case 90 -> "a quarter turn";
            case 180 -> "a half turn";
            case 270 -> "a three quarter turn";
            case 360 -> "a full turn";
            default -> "a turn of " + degrees + " degrees";
        };
    }

    private void tell(Section section, int line, String what) {
        problems.warning(
                "heading_mismatch",
                line,
                1,
                "The heading of " + section.name() + " names " + what + ", but its steps do not have it.",
                "Correct the heading or the steps; Cuelead reads the steps.");
    }
}
