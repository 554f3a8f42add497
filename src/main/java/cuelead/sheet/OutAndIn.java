package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Step;
import java.util.List;

/** Two steps behind "out, out" that come back to the centre are "in, in", however they are worded. */
final class OutAndIn {
    private OutAndIn() {}

    /** Changes the steps where they are so. */
    static void reread(List<Step> steps) {
        for (int i = 0; i + 3 < steps.size(); i++) {
            boolean out =
                    steps.get(i).action() == Action.OUT && steps.get(i + 1).action() == Action.OUT;
            if (out && comesBack(steps.get(i + 2)) && closes(steps.get(i + 3))) {
                steps.set(i + 2, in(steps.get(i + 2), Direction.BACK_CENTRE));
                steps.set(i + 3, in(steps.get(i + 3), Direction.TOGETHER));
            }
        }
    }

    private static boolean comesBack(Step step) {
        boolean centre = step.direction() == Direction.BACK_CENTRE || step.direction() == Direction.CENTRE;
        return step.action() == Action.IN || (step.action() == Action.STEP && centre);
    }

    private static boolean closes(Step step) {
        return step.action() == Action.CLOSE || comesBack(step);
    }

    private static Step in(Step step, Direction direction) {
        Direction plain = step.direction() == Direction.CENTRE ? Direction.CENTRE : direction;
        return new Step(
                step.count(),
                step.foot(),
                Action.IN,
                plain,
                step.turn(),
                step.transfer(),
                step.weightAfter(),
                step.line(),
                step.column());
    }
}
