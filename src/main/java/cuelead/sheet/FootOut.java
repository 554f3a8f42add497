package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** A free foot that touched somewhere, and how it comes back: "heel forward, return", "toe forward, step down". */
final class FootOut {
    private static final Set<Action> OUT =
            EnumSet.of(Action.HEEL, Action.TOE, Action.TOUCH, Action.TAP, Action.POINT, Action.DIG, Action.KICK);
    private static final Set<Action> ON_A_PART = EnumSet.of(Action.HEEL, Action.TOE);

    private final Footing footing;

    FootOut(Footing footing) {
        this.footing = footing;
    }

    /** What a return or a step down is for this foot; empty for other actions, and where a recover is one. */
    Optional<Move> comesBack(Phrase.ActionCall call, Optional<Foot> foot, Turn turn, int column) {
        if (call.action() == Action.RECOVER && isOut(foot, OUT)) {
            return Optional.of(new Move(foot, Action.CLOSE, Direction.TOGETHER, turn, call.transfer(), column));
        }
        if (call.action() == Action.STEP && call.direction() == Direction.DOWN) {
            boolean lowers = isOut(foot, ON_A_PART);
            Direction down = isOut(foot, Set.of(Action.HEEL)) ? Direction.TOE : Direction.HEEL;
            return Optional.of(new Move(
                    foot,
                    lowers ? Action.DROP : Action.STEP,
                    lowers ? down : Direction.PLACE,
                    turn,
                    Transfer.FULL,
                    column));
        }
        return Optional.empty();
    }

    private boolean isOut(Optional<Foot> foot, Set<Action> actions) {
        return foot.isPresent()
                && footing.last()
                        .filter(move -> actions.contains(move.action()) && move.transfer() == Transfer.NONE)
                        .filter(move -> move.foot().equals(foot))
                        .isPresent();
    }
}
