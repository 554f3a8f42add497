package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.Step;
import java.util.List;
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
        return figure.pattern().size() >= SHORTEST
                && Stream.of(values())
                        .filter(trait -> trait.marks(figure))
                        .anyMatch(
                                trait -> steps.stream().noneMatch(step -> trait.isIn(step.action(), step.direction())));
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
