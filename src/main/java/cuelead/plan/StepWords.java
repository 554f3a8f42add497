package cuelead.plan;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.FigureRun;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The short word of a step, in the trade's words. */
final class StepWords {
    private static final Set<Action> SIDEWAYS =
            EnumSet.of(Action.BUMP, Action.SWAY, Action.TWIST, Action.SWIVEL_HEELS, Action.SWIVEL_TOES, Action.SWIVET);

    private StepWords() {}

    /** The figure that a step of a section belongs to. */
    static Optional<FigureRun> figureOf(Section section, Step step) {
        int index = indexOf(section, step);
        return section.figures().stream()
                .filter(run -> run.firstStep() <= index && index < run.endStep())
                .findFirst();
    }

    static boolean begins(FigureRun figure, Section section, Step step) {
        return indexOf(section, step) == figure.firstStep();
    }

    private static int indexOf(Section section, Step step) {
        return section.steps().indexOf(step);
    }

    /** What may be said for the step alone: one word each, best first. */
    static List<String> of(Section section, Step step) {
        Optional<FigureRun> figure = figureOf(section, step);
        if (figure.isEmpty()) {
            return plainWords(step);
        }
        int place = indexOf(section, step) - figure.get().firstStep();
        List<String> words = new ArrayList<>();
        for (String word : figure.get().figure().callWords().get(place).split("/")) {
            words.add(isMirrored(figure.get()) ? Phrase.mirrored(word) : word);
        }
        if (place == 0 && words.get(0).equals("side")) {
            words.add(0, figure.get().lead().word());
        }
        return words;
    }

    private static boolean isMirrored(FigureRun figure) {
        return figure.lead() != figure.figure().lead();
    }

    /** A step outside every figure: "right side", "step forward", "touch". */
    static List<String> headOfPlain(Step step) {
        String word = plainWord(step);
        if (word.equals("side") && step.foot().isPresent()) {
            return List.of(step.foot().get().word() + " side", word);
        }
        return word.equals("forward") || word.equals("back") ? List.of("step " + word, word) : plainWords(step);
    }

    /** "bump right", "heels left", then "bump": to which side hips or heels go is all that is danced. */
    private static List<String> plainWords(Step step) {
        String word = plainWord(step);
        boolean hasSide = step.direction() == Direction.LEFT || step.direction() == Direction.RIGHT;
        return SIDEWAYS.contains(step.action()) && hasSide
                ? List.of(word + " " + step.direction().word(), word)
                : List.of(word);
    }

    private static String plainWord(Step step) {
        return switch (step.action()) {
            case STEP, WALK, PRISSY, SKATE -> directionWord(step);
            case INPLACE, CHANGE, BALL -> "step";
            case CLOSE -> "together";
            case ROCK -> "rock";
            case STOMPUP -> "stomp";
            case HIPROLL, BODYROLL -> "roll";
            case PIVOT, HINGE, SPIN, UNWIND -> "turn";
            case HEELS_IN, SPLIT_HEELS, SWIVEL_HEELS -> "heels";
            case TOES_IN, SPLIT_TOES, SWIVEL_TOES -> "toes";
            case CROSSTOUCH -> "cross";
            case KNEE_POP -> "pop";
            case RETURN_CENTRE -> "centre";
            default -> step.action().word();
        };
    }

    private static String directionWord(Step step) {
        return switch (step.direction()) {
            case BACK, BACK_CENTRE, BACK_DIAG -> "back";
            case SIDE -> "side";
            case OVER, FWD_ACROSS -> "cross";
            case BEHIND -> "behind";
            case TOGETHER -> "together";
            case FWD, FWD_CENTRE, FWD_DIAG -> step.action() == Action.WALK ? "walk" : "forward";
            default -> "step";
        };
    }
}
