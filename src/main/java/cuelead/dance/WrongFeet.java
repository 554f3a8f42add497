package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells of feet that act while they bear the weight. A line whose feet are all the wrong way round begins with such a foot,
 * and so does what follows it; that is one mistake.
 */
final class WrongFeet {
    private final List<Step> steps;
    private final String file;
    private final boolean endsWrong;

    /** {@code endsWrong}: whether the last step leaves the wrong foot free for what comes then. */
    WrongFeet(List<Step> steps, String file, boolean endsWrong) {
        this.steps = steps;
        this.file = file;
        this.endsWrong = endsWrong;
    }

    /** {@code impossible}: indices of the steps whose foot is not free, in their order. */
    List<Problem> problems(List<Integer> impossible) {
        List<Problem> problems = new ArrayList<>();
        int at = 0;
        while (at < impossible.size()) {
            int first = impossible.get(at);
            boolean pair = at + 1 < impossible.size() && areOneLine(first, impossible.get(at + 1));
            boolean toEnd = !pair && tellsOfEnd(impossible.subList(at, impossible.size()));
            problems.add(
                    pair
                            ? wrongLine(first, impossible.get(at + 1))
                            : toEnd ? wrongLastLine(first) : wrongFoot(steps.get(first)));
            at += pair ? 2 : 1;
        }
        return problems;
    }

    /** Whether the last of these steps is told together with the end, which it leaves wrong. */
    boolean tellsOfEnd(List<Integer> impossible) {
        int unpaired = 0;
        while (unpaired + 1 < impossible.size()) {
            unpaired += areOneLine(impossible.get(unpaired), impossible.get(unpaired + 1)) ? 2 : 1;
        }
        return endsWrong
                && unpaired < impossible.size()
                && impossible.get(unpaired) < steps.size() - 1
                && unpaired == impossible.size() - 1
                && areOneLine(impossible.get(unpaired), steps.size());
    }

    /** Whether all from the one to before the other stands on one line of the sheet. */
    private boolean areOneLine(int from, int to) {
        int line = steps.get(from).line();
        return steps.subList(from, to).stream().allMatch(step -> step.line() == line);
    }

    private Problem wrongLine(int first, int behind) {
        Step next = steps.get(behind);
        return problem(
                steps.get(first),
                acts(steps.get(first)) + ", but it bears the weight, and so does the "
                        + next.foot().orElseThrow().word() + " foot behind that, on count "
                        + next.count().label() + ".",
                otherFeet(first, behind) + ", or look at both places.");
    }

    private Problem wrongLastLine(int first) {
        return problem(
                steps.get(first),
                acts(steps.get(first))
                        + ", but it bears the weight, and the dance then ends on the wrong foot to begin again.",
                otherFeet(first, steps.size()) + ", or look at both places.");
    }

    private String otherFeet(int first, int behind) {
        String from = steps.get(first).count().label();
        String last = steps.get(behind - 1).count().label();
        return "Let the other foot do each action of "
                + (from.equals(last) ? "count " + from : "counts " + from + " to " + last);
    }

    private Problem wrongFoot(Step step) {
        String other = step.foot().orElseThrow().other().word();
        return problem(
                step,
                acts(step) + ", but it bears the weight.",
                "Let the " + other + " foot do it, or let the " + other
                        + " foot take the weight on the action before.");
    }

    private static String acts(Step step) {
        return "On count " + step.count().label() + " the "
                + step.foot().orElseThrow().word() + " foot " + FootWords.of(step.action());
    }

    private Problem problem(Step step, String sentence, String tryThis) {
        return new Problem(Severity.ERROR, "impossible_weight", file, step.line(), step.column(), sentence, tryThis);
    }
}
