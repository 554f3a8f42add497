package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.Joint;
import cuelead.sheet.Phrase.Remarks;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * "R heel & L heel &": behind a foot that took no weight, "&" may be a step of its own, in which this foot closes. It is
 * one where the counts leave a count for it (common practice).
 */
final class Ampersands {
    private Ampersands() {}

    /** The step that an "&" at this column may be. */
    static Optional<Phrase> step(List<Phrase> before, int column) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        return before.get(before.size() - 1)
                .action()
                .filter(call ->
                        call.transfer() == Transfer.NONE && call.action().needsFreeFoot())
                .filter(call -> !ActionRules.needsNoFoot(call.action()))
                .map(call -> closing(call.foot(), column));
    }

    private static Phrase closing(Optional<Foot> foot, int column) {
        ActionCall close = new ActionCall(foot, Action.CLOSE, Direction.TOGETHER, Optional.empty(), Transfer.FULL);
        return new Phrase(
                column,
                Optional.empty(),
                Optional.of(close),
                1,
                OptionalInt.empty(),
                Remarks.NONE,
                Joint.LINKED,
                List.of(),
                false,
                true);
    }
}
