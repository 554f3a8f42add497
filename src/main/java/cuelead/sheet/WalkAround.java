package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Transfer;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.TurnCall;
import java.util.List;
import java.util.Optional;

/**
 * "Walk R, L, R, L making a 3/4 turn R", "run R, L, R (1/2 turn L)": a turn behind the last of several walked feet is that
 * of all of them, and they go around.
 */
final class WalkAround {
    /** A turn behind one or two feet is danced on the last of them. */
    private static final int FEWEST_STEPS = 3;

    private WalkAround() {}

    /** Whether the clause only ends such a list; the phrases are then one that goes around. */
    static boolean ends(PhraseDraft draft, List<Phrase> phrases) {
        Optional<TurnCall> turn = draft.turnOfAll();
        if (turn.isEmpty() || !draft.shape().isOnlyFeetTurning()) {
            return false;
        }
        int from = phrases.size();
        while (from > 0 && walks(phrases.get(from - 1))) {
            from--;
        }
        int steps = phrases.size() - from + draft.feet().size();
        if (phrases.size() - from < FEWEST_STEPS - 1) {
            return false;
        }
        List<Phrase> walked = phrases.subList(from, phrases.size());
        ActionCall around = around(walked.get(0).action().orElseThrow(), turn.get());
        Phrase all = draft.phrase(Optional.of(around)).repeated(steps - 1).at(walked.get(0));
        walked.clear();
        phrases.add(all);
        return true;
    }

    /** The whole list where it stands in one clause: "walk R-L-R-L making a 3/4 turn R". */
    static Optional<Phrase> of(PhraseDraft draft, Optional<ActionCall> action) {
        Optional<TurnCall> turn = draft.turnOfAll();
        boolean walks = action.filter(WalkAround::walks).isPresent() && !draft.isFigure();
        return walks && turn.isPresent() && draft.feet().size() >= FEWEST_STEPS
                ? Optional.of(draft.phrase(Optional.of(around(action.get(), turn.get())))
                        .repeated(draft.feet().size() - 1))
                : Optional.empty();
    }

    private static boolean walks(Phrase phrase) {
        return phrase.figure().isEmpty()
                && phrase.action()
                        .filter(call -> walks(call) && call.turn().isEmpty())
                        .isPresent();
    }

    private static boolean walks(ActionCall call) {
        return call.action() == Action.WALK && call.direction() == Direction.FWD;
    }

    private static ActionCall around(ActionCall walk, TurnCall turn) {
        return new ActionCall(walk.foot(), Action.WALK, Direction.TURN, Optional.of(turn), Transfer.FULL);
    }
}
