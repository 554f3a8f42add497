package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** "Weight on L", "keeping weight on R": where the sheet says that the weight is behind an action. */
final class WeightNote {
    private final Problems problems;
    private final int line;
    private final Footing footing;

    /** Actions of the body that may end on either foot: "roll hips to the left, ending with weight on left". */
    private static final Set<Action> SHIFTING =
            EnumSet.of(Action.HIPROLL, Action.BODYROLL, Action.SHIMMY, Action.DIP, Action.BOUNCE);

    WeightNote(Problems problems, int line, Footing footing) {
        this.problems = problems;
        this.line = line;
        this.footing = footing;
    }

    /** A weight note ("weight on L", "no weight") has the last word about the last action of its phrase. */
    List<Move> weighted(Phrase phrase, List<Move> moves) {
        Optional<Foot> note = phrase.remarks().weight();
        if (note.isEmpty() || moves.isEmpty()) {
            return moves;
        }
        Foot foot = note.get();
        Move move = moves.get(moves.size() - 1);
        if (move.action() == Action.UNWIND) {
            move = new Move(note, move.action(), move.direction(), move.turn(), Transfer.FULL, move.column());
        }
        Transfer transfer = move.transfer();
        if (move.foot().equals(note)) {
            transfer = Transfer.FULL;
        } else if (move.takesWeight()) {
            transfer = Transfer.NONE;
        } else if (footing.weight().isOn(foot.other()) && !SHIFTING.contains(move.action())) {
            problems.error(
                    "weight_note",
                    line,
                    move.column(),
                    "The sheet says weight on " + foot.word() + ", but by its steps the weight is on "
                            + foot.other().word() + " here.",
                    "Check which foot stepped last before it.");
        }
        List<Move> changed = new ArrayList<>(moves);
        changed.set(moves.size() - 1, footing.state(move.with(transfer), foot));
        return changed;
    }
}
