package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.FigureRow;
import cuelead.dance.Foot;
import cuelead.dance.Step;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Steps that follow each other in a figure however they are worded: what a jazz box, a rocking chair, a strut is known by. */
final class FigureShapes {
    private static final Set<Action> TOES =
            EnumSet.of(Action.TOE, Action.TOUCH, Action.TAP, Action.POINT, Action.BALL, Action.CROSSTOUCH);
    private static final Set<Action> HEELS = EnumSet.of(Action.HEEL, Action.DIG, Action.TOUCH, Action.TAP);
    private static final Set<Direction> FORWARD = EnumSet.of(Direction.FWD, Direction.FWD_DIAG);
    private static final Set<Direction> BACK =
            EnumSet.of(Direction.BACK, Direction.BACK_DIAG, Direction.BACK_CENTRE, Direction.BEHIND);
    private static final Set<Direction> ASIDE = EnumSet.of(Direction.SIDE, Direction.LEFT, Direction.RIGHT);

    private FigureShapes() {}

    /** Whether the figure is known by something that the steps nowhere do. */
    static boolean areMissing(Figure figure, List<Step> steps) {
        if (figure.id().startsWith("jazz_box")) {
            return IntStream.range(0, steps.size()).noneMatch(i -> isJazzBox(steps, i));
        }
        return switch (figure.id()) {
            case "rocking_chair" -> IntStream.range(0, steps.size()).noneMatch(i -> rocksBothWays(steps, i));
            case "toe_strut" -> areNoStruts(steps, TOES, Direction.TOE);
            case "heel_strut" -> areNoStruts(steps, HEELS, Direction.HEEL);
            default -> false;
        };
    }

    /** Nothing begins one, or all that is dropped is what the other sort of strut drops. */
    private static boolean areNoStruts(List<Step> steps, Set<Action> begins, Direction otherDrop) {
        List<Direction> dropped = steps.stream()
                .filter(step -> step.action() == Action.DROP)
                .map(Step::direction)
                .toList();
        boolean areOthers = !dropped.isEmpty() && dropped.stream().allMatch(otherDrop::equals);
        return areOthers || steps.stream().map(Step::action).noneMatch(begins::contains);
    }

    /** One foot crosses in front, and the other goes back. */
    private static boolean isJazzBox(List<Step> steps, int i) {
        Step step = steps.get(i);
        boolean crosses = step.action() == Action.CROSS || step.direction() == Direction.OVER;
        return crosses
                && IntStream.range(i + 1, Math.min(steps.size(), i + 3))
                        .mapToObj(steps::get)
                        .anyMatch(next -> !next.foot().equals(step.foot()) && BACK.contains(next.direction()));
    }

    /** The same foot forward and, two steps on, back; or the other way round. */
    private static boolean rocksBothWays(List<Step> steps, int i) {
        Step step = steps.get(i);
        return IntStream.range(i + 1, Math.min(steps.size(), i + 4))
                .mapToObj(steps::get)
                .filter(next -> next.foot().equals(step.foot()))
                .anyMatch(next -> goes(step, FORWARD, next, BACK) || goes(step, BACK, next, FORWARD));
    }

    private static boolean goes(Step one, Set<Direction> there, Step other, Set<Direction> back) {
        return there.contains(one.direction()) && back.contains(other.direction());
    }

    /** Index behind the first step to the side with which this foot may begin the figure, from an index on; -1 without one. */
    static int begins(FigureRow row, Foot foot, List<Step> steps, int from) {
        boolean mayTurn = isVine(row);
        return IntStream.range(from, steps.size())
                .filter(i -> steps.get(i).foot().equals(Optional.of(foot)))
                .filter(i -> ASIDE.contains(steps.get(i).direction())
                        || (mayTurn && !steps.get(i).turn().isNone()))
                .map(i -> i + 1)
                .findFirst()
                .orElse(-1);
    }

    /** It may be danced turning. */
    private static boolean isVine(FigureRow row) {
        return row.figure().id().startsWith("vine");
    }

    /**
     * Whether it is named by the side to which it goes, and two of them are danced in the order in which they are named: other
     * figures may be named by a foot that does not begin them.
     */
    static boolean goesToItsSide(FigureRow row) {
        return isVine(row)
                || row.figure().id().equals("nightclub_basic")
                || row.figure().id().equals("chasse");
    }
}
