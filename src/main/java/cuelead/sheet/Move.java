package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Step;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import java.util.Optional;

/**
 * An action without a count yet.
 *
 * @param weightAfter unknown until it is danced
 * @param column      1-based column of its phrase
 */
record Move(
        Optional<Foot> foot,
        Action action,
        Direction direction,
        Turn turn,
        Transfer transfer,
        Weight weightAfter,
        int column) {

    /** Not danced yet. */
    Move(Optional<Foot> foot, Action action, Direction direction, Turn turn, Transfer transfer, int column) {
        this(foot, action, direction, turn, transfer, Weight.UNKNOWN, column);
    }

    /** The action of a step, to be danced again. */
    static Move of(Step step, int column) {
        return new Move(step.foot(), step.action(), step.direction(), step.turn(), step.transfer(), column);
    }

    static Move hold(int column) {
        return new Move(Optional.empty(), Action.HOLD, Direction.NONE, Turn.NONE, Transfer.NONE, column);
    }

    Move turnedBy(Turn more) {
        return new Move(foot, action, direction, turn.plus(more), transfer, weightAfter, column);
    }

    Move leaving(Weight weight) {
        return new Move(foot, action, direction, turn, transfer, weight, column);
    }

    Move with(Transfer other) {
        return new Move(foot, action, direction, turn, other, weightAfter, column);
    }

    boolean takesWeight() {
        return foot.isPresent() && transfer.takesWeight();
    }
}
