package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whether a pivot turns away from the foot in front: behind a step forward of R it turns left, of L right (the published
 * glossaries agree); the other way the legs would cross.
 */
public final class PivotCheck {
    private static final Set<Direction> FORWARD = EnumSet.of(Direction.FWD, Direction.FWD_DIAG);
    private static final Set<Action> STEPS = EnumSet.of(Action.STEP, Action.WALK);

    private PivotCheck() {}

    static List<Problem> check(Dance dance, String file) {
        return Stream.concat(dance.parts().stream(), dance.tags().stream().map(Tag::part))
                .flatMap(part -> wrongWay(WallWalk.steps(part)).stream())
                .map(step -> problem(file, step))
                .toList();
    }

    /** The pivots that turn over the foot in front. */
    public static List<Step> wrongWay(List<Step> steps) {
        return IntStream.range(1, steps.size())
                .filter(i -> turnsOverTheFootInFront(steps.get(i - 1), steps.get(i)))
                .filter(i -> i < 2 || isFree(steps.get(i - 2), steps.get(i - 1)))
                .mapToObj(steps::get)
                .toList();
    }

    /** A step onto the foot that bears the weight is a mistake of its own. */
    private static boolean isFree(Step before, Step step) {
        return step.foot().filter(before.weightAfter()::isOn).isEmpty();
    }

    private static boolean turnsOverTheFootInFront(Step before, Step step) {
        boolean stepsForward = STEPS.contains(before.action()) && FORWARD.contains(before.direction());
        return stepsForward
                && step.action() == Action.PIVOT
                && before.foot()
                        .filter(foot -> foot == Foot.RIGHT
                                ? step.turn().degrees() > 0
                                : step.turn().degrees() < 0)
                        .isPresent();
    }

    private static Problem problem(String file, Step pivot) {
        String side = pivot.turn().degrees() > 0 ? "right" : "left";
        String other = pivot.turn().degrees() > 0 ? "left" : "right";
        return new Problem(
                Severity.WARNING,
                "pivot_direction",
                file,
                pivot.line(),
                pivot.column(),
                "This pivot turns " + side + ", but behind the " + side + " foot in front a pivot turns " + other + ".",
                "Let it turn " + other + ", or step forward on the " + other + " foot before it.");
    }
}
