package cuelead.plan;

import cuelead.dance.Action;
import cuelead.dance.FigureRun;
import cuelead.dance.Foot;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The short word of a step and the head of a figure, in the trade's words. */
final class StepWords {
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
            return List.of(plainWord(step));
        }
        int place = indexOf(section, step) - figure.get().firstStep();
        List<String> words = new ArrayList<>();
        for (String word : figure.get().figure().callWords().get(place).split("/")) {
            words.add(isMirrored(figure.get()) ? Phrase.mirrored(word) : word);
        }
        return words;
    }

    /** What the figure is called, side first where its head names none, then without: "right jazz box", "jazz box". */
    static List<String> headsOf(FigureRun figure) {
        String head = figure.figure().callHead();
        if (Phrase.namesSide(head)) {
            return List.of(isMirrored(figure) ? Phrase.mirrored(head) : head);
        }
        return List.of(figure.lead().word() + " " + head, head);
    }

    private static boolean isMirrored(FigureRun figure) {
        return figure.lead() != figure.figure().lead();
    }

    /** A step outside every figure, with its side where that matters: "step right", "touch", "right side". */
    static List<String> headOfPlain(Step step) {
        String word = plainWord(step);
        return step.foot().map(Foot::word).filter(side -> step.transfer().takesWeight()).stream()
                .map(side -> List.of(side + " " + word, word))
                .findFirst()
                .orElse(List.of(word));
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
