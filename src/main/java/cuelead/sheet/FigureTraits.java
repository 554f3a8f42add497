package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.Step;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What marks a figure in steps however they are worded: that feet cross, that one goes behind, back, or rocks. */
enum FigureTraits {
    CROSSES,
    GOES_BEHIND,
    ROCKS,
    GOES_BACK;

    private static final int SHORTEST = 3;

    /** Whether the steps lack what marks the figure, so that it cannot be among them. */
    static boolean isForeign(Figure figure, List<Step> steps) {
        if (figure.id().equals("nightclub_basic")) { // told as rock and recover, or as close and cross
            return steps.stream().noneMatch(step -> CROSSES.isIn(step.action(), step.direction()))
                    && steps.stream().noneMatch(step -> ROCKS.isIn(step.action(), step.direction()));
        }
        return figure.pattern().size() >= SHORTEST
                && (lacksReturn(figure, steps)
                        || lacksLock(figure, steps)
                        || Stream.of(values())
                                .filter(trait -> trait.marks(figure))
                                .anyMatch(trait ->
                                        steps.stream().noneMatch(step -> trait.isIn(step.action(), step.direction()))));
    }

    /** A coaster goes out and home: a step, the other foot to it, and away the other way; whatever the last step is. */
    private static boolean lacksReturn(Figure figure, List<Step> steps) {
        if (!figure.id().startsWith("coaster")) {
            return false;
        }
        Action first = figure.pattern().get(0).action();
        boolean back = figure.pattern().get(0).direction() == Direction.BACK;
        return IntStream.range(0, steps.size() - 1)
                .noneMatch(i -> goesOut(steps.get(i), first, back)
                        && comesToIt(steps.get(i + 1))
                        && (i + 2 >= steps.size() || !goesOut(steps.get(i + 2), first, back)));
    }

    /** A lock is between two steps along one line; between steps to the side one foot only goes behind. */
    private static boolean lacksLock(Figure figure, List<Step> steps) {
        boolean locks = figure.pattern().stream().anyMatch(beat -> beat.action() == Action.LOCK);
        return locks
                && IntStream.range(0, steps.size())
                        .noneMatch(i -> steps.get(i).action() == Action.LOCK
                                || (i > 0
                                        && i + 1 < steps.size()
                                        && (crosses(steps.get(i).action()) || comesToIt(steps.get(i)))
                                        && isAlong(steps.get(i - 1))
                                        && isAlong(steps.get(i + 1))));
    }

    private static boolean isAlong(Step step) {
        return goesForward(step) || goesBack(step.direction());
    }

    private static boolean goesOut(Step step, Action first, boolean back) {
        boolean rocks = step.action() == Action.ROCK || step.action() == Action.RECOVER;
        boolean home = step.direction() == Direction.PLACE;
        boolean behind = goesBack(step.direction()) || step.action() == Action.BEHIND;
        boolean out = back ? behind && !home : goesForward(step);
        return !rocks && bears(step) && out && (first == Action.STEP || first == step.action());
    }

    private static boolean goesForward(Step step) {
        return step.direction() == Direction.FWD || step.direction() == Direction.FWD_DIAG;
    }

    private static boolean comesToIt(Step step) {
        boolean home = step.direction() == Direction.TOGETHER || step.direction() == Direction.PLACE;
        boolean steps = step.action() != Action.RECOVER && step.action() != Action.PIVOT && bears(step);
        return steps && (home || step.action() == Action.CLOSE || step.action() == Action.LOCK);
    }

    private static boolean bears(Step step) {
        return step.foot().filter(step.weightAfter()::isOn).isPresent();
    }

    /** Told by its own word: a recover alone marks no rock, a step in place none that goes back. */
    private boolean marks(Figure figure) {
        return figure.pattern().stream().anyMatch(beat -> switch (this) {
            case CROSSES, GOES_BEHIND -> isIn(beat.action(), beat.direction());
            case ROCKS -> beat.action() == Action.ROCK;
            case GOES_BACK -> beat.action() == Action.STEP && beat.direction() == Direction.BACK;
        });
    }

    private boolean isIn(Action action, Direction direction) {
        return switch (this) {
            case CROSSES -> crosses(action) || direction == Direction.OVER || direction == Direction.BEHIND;
            case GOES_BEHIND -> action == Action.BEHIND || action == Action.LOCK || direction == Direction.BEHIND;
            case ROCKS -> rocks(action);
            case GOES_BACK -> goesBack(direction);
        };
    }

    private static boolean crosses(Action action) {
        return switch (action) {
            case CROSS, BEHIND, LOCK, CROSSTOUCH -> true;
            default -> false;
        };
    }

    private static boolean rocks(Action action) {
        return switch (action) {
            case ROCK, RECOVER, PRESS, LUNGE, INPLACE, CHANGE, SWAY, BUMP -> true;
            default -> false;
        };
    }

    private static boolean goesBack(Direction direction) {
        return switch (direction) {
            case BACK, BACK_DIAG, BACK_CENTRE, PLACE, BEHIND -> true;
            default -> false;
        };
    }
}
