package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Foot;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The prose of one step in one clean style. Of several wordings it takes the first that reads back to the same step, so
 * that what is written is what is danced.
 */
final class StepWords {
    /** Verbs that turn by themselves. */
    private static final Set<Action> TURNING = EnumSet.of(Action.PIVOT, Action.SPIN, Action.UNWIND);

    private StepWords() {}

    /** {@code footing} is where the dancers stand before the step; it goes on behind it. */
    static String of(Step step, Footing footing) {
        return of(List.of(step), footing);
    }

    /** One action that goes on for several counts: its first step, and those that go on from it. */
    static String of(List<Step> run, Footing footing) {
        String length = run.size() > 1 ? " (" + run.size() + " counts)" : "";
        List<String> wordings = wordings(run.get(0));
        for (String wording : wordings) {
            String plain = wording + length;
            for (String words : List.of(plain, plain + note(run.get(run.size() - 1)), plain + " (no weight)")) {
                if (readsBack(words, run, footing.copy())) {
                    readsBack(words, run, footing);
                    return words;
                }
            }
        }
        run.forEach(step -> footing.take(Move.of(step, 0), Footing.Naming.NAMED));
        return wordings.get(0) + length;
    }

    private static String note(Step step) {
        return switch (step.weightAfter()) {
            case LEFT -> " (weight on L)";
            case RIGHT -> " (weight on R)";
            case BOTH, UNKNOWN -> "";
        };
    }

    /** Whether the words mean these steps, danced from there. */
    private static boolean readsBack(String words, List<Step> run, Footing footing) {
        List<Phrase> phrases = LineFit.phrases(words);
        if (phrases.size() != 1 || !phrases.get(0).readable()) {
            return false;
        }
        List<Move> moves = new MoveMaker(Problems.unheard(), 0, footing).moves(phrases.get(0), run.size());
        return moves.size() == run.size()
                && IntStream.range(0, run.size()).allMatch(i -> isSame(moves.get(i), run.get(i)));
    }

    private static boolean isSame(Move move, Step step) {
        return move.foot().equals(step.foot())
                && move.action() == step.action()
                && move.direction() == step.direction()
                && move.turn().equals(step.turn())
                && move.transfer() == step.transfer()
                && move.weightAfter() == step.weightAfter();
    }

    private static List<String> wordings(Step step) {
        String foot = step.foot().map(Foot::letter).orElse("");
        String turn = turn(step.turn());
        List<String> wordings = new ArrayList<>();
        for (String verb : verbs(step.action())) {
            for (String where : places(step)) {
                String plain = join(verb.replace("*", foot), verb.contains("*") ? "" : foot, where);
                if (turn.isEmpty()) {
                    wordings.add(plain);
                } else {
                    if (TURNING.contains(step.action())) {
                        wordings.add(join(verb, turn, where));
                    }
                    wordings.add(join("turn", turn, plain));
                    wordings.add(join(plain, "turning", turn));
                    wordings.add(join(verb.replace("*", ""), turn, step.foot().isPresent() ? "onto " + foot : ""));
                    wordings.add(join(verb.replace("*", ""), turn, where));
                }
            }
        }
        return wordings;
    }

    private static String join(String... words) {
        StringBuilder joined = new StringBuilder();
        for (String word : words) {
            String plain = word.strip();
            joined.append(joined.isEmpty() || plain.isEmpty() ? "" : " ").append(plain);
        }
        return joined.toString();
    }

    /** "1/4 R", "1 1/2 L". */
    private static String turn(Turn turn) {
        if (turn.isNone()) {
            return "";
        }
        int eighths = Math.abs(turn.degrees()) / 45;
        int whole = eighths % 8 == 0 ? eighths / 8 - 1 : eighths / 8;
        String part =
                List.of("full", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8").get(eighths % 8);
        return (whole > 0 ? whole + " " : "") + part + (turn.degrees() > 0 ? " R" : " L");
    }

    /** Verbs; the star is where the foot stands if not behind the verb. */
    private static List<String> verbs(Action action) {
        return switch (action) {
            case BALL -> List.of("ball *", "step ball of *");
            case BEHIND, CLOSE, INPLACE, STEP, OUT, IN -> List.of("step");
            case TOE -> List.of("touch * toe", "toe");
            case HEEL -> List.of("touch * heel", "heel");
            case DROP -> List.of("drop *");
            case GRIND -> List.of("grind * heel", "grind");
            case SWIVEL_HEELS -> List.of("swivel heels");
            case SWIVEL_TOES -> List.of("swivel toes");
            case SPLIT_HEELS -> List.of("split heels");
            case SPLIT_TOES -> List.of("split toes");
            case STOMPUP -> List.of("stomp up *", "stomp up");
            case JUMP -> List.of("jump");
            case KNEE_POP -> List.of("pop knees");
            case HIPROLL -> List.of("hip roll");
            case BODYROLL -> List.of("body roll");
            case PRISSY -> List.of("prissy walk");
            case CROSSTOUCH -> List.of("cross touch");
            case HEELS_IN, TOES_IN, RETURN_CENTRE -> List.of(action.word().replace('-', ' '));
            case FAN -> List.of("fan * toe", "fan * heel");
            default -> List.of(action.word());
        };
    }

    private static List<String> places(Step step) {
        String other = step.foot().map(foot -> foot.other().letter()).orElse("");
        return switch (step.direction()) {
            case FWD -> List.of("forward", "");
            case BACK -> List.of("back", "");
            case SIDE -> List.of("to side", "", "out");
            case FWD_DIAG -> List.of("forward to diagonal", "out forward to diagonal", "");
            case BACK_DIAG -> List.of("back to diagonal", "out back to diagonal");
            case FWD_CENTRE -> List.of("forward to centre", "in forward to centre");
            case BACK_CENTRE -> List.of("back to centre", "in back to centre");
            case TOGETHER -> List.of("beside " + other, "in beside " + other, "");
            case OVER -> List.of("over " + other, "");
            case BEHIND -> List.of("behind " + other, "");
            case PLACE -> List.of("", "in place");
            case THIRD -> List.of("in third");
            case CENTRE -> List.of("to centre", "in to centre", "in", "");
            case RIGHT -> List.of("to R", "right", "");
            case LEFT -> List.of("to L", "left", "");
            case HEEL -> List.of("heel");
            case TOE -> List.of("toe");
            case BACK_TO_FRONT -> List.of("from back to front", "");
            case FRONT_TO_BACK -> List.of("from front to back");
            case OVER_SHIN -> List.of("across " + other, "");
            case TOE_IN, HEEL_IN -> List.of("in", "to centre");
            case TOE_OUT, HEEL_OUT -> List.of("out", "");
            default -> List.of("", step.direction().word().replace('-', ' '));
        };
    }
}
