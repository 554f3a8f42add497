package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.dance.Weight;
import java.util.Optional;

/**
 * The account of the weight while moves are danced one after the other. Behind a line that could not be read it is a
 * guess, good enough to find the free foot but not to hold against the sheet, until a foot that is named takes weight.
 */
final class Footing {
    private Weight likely;
    private Trust trust = Trust.KNOWN;
    private Optional<Move> last = Optional.empty();
    private Optional<Weight> start = Optional.empty();

    private enum Trust {
        KNOWN,
        DOUBTED
    }

    /** Whether the sheet itself says which foot moves. */
    enum Naming {
        NAMED,
        IMPLIED
    }

    Footing(Weight weight) {
        likely = weight;
    }

    Footing copy() {
        Footing copy = new Footing(likely);
        copy.trust = trust;
        copy.last = last;
        copy.start = start;
        return copy;
    }

    /** Where the weight is, unless that is doubtful. */
    Weight weight() {
        return trust == Trust.KNOWN ? likely : Weight.UNKNOWN;
    }

    boolean isDoubted() {
        return trust == Trust.DOUBTED;
    }

    /** The foot that bears the weight, as far as can be told. */
    Optional<Foot> standing() {
        return switch (likely) {
            case LEFT -> Optional.of(Foot.LEFT);
            case RIGHT -> Optional.of(Foot.RIGHT);
            case BOTH -> Optional.empty();
            case UNKNOWN -> isUntold() ? Optional.of(Foot.LEFT) : Optional.empty();
        };
    }

    /** Before the first step a sheet that says nothing means the weight on left (common practice). */
    private boolean isUntold() {
        return start.isEmpty() && trust == Trust.KNOWN;
    }

    /** The other one. */
    Optional<Foot> free() {
        return standing().map(Foot::other);
    }

    Optional<Move> last() {
        return last;
    }

    /** Where the weight was before the first foot moved; unknown where that foot was only guessed. */
    Weight start() {
        return start.orElse(Weight.UNKNOWN);
    }

    Move take(Move move, Naming naming) {
        begin(move);
        boolean named = naming == Naming.NAMED && move.foot().isPresent();
        if (move.transfer() == Transfer.SPLIT) {
            likely = Weight.BOTH;
            trust = Trust.KNOWN;
        } else if (move.takesWeight()) {
            likely = Weight.on(move.foot().orElseThrow());
            trust = named ? Trust.KNOWN : trust;
        } else if (named && move.action().needsFreeFoot() && isDoubted()) {
            likely = Weight.on(move.foot().orElseThrow().other());
        }
        Move taken = move.leaving(weight());
        last = Optional.of(taken);
        return taken;
    }

    private void begin(Move move) {
        if (start.isEmpty() && move.foot().isPresent()) {
            start = Optional.of(
                    isDoubted() ? Weight.UNKNOWN : Weight.on(move.foot().get().other()));
        }
    }

    /** The sheet says where the weight is. */
    Move state(Move move, Foot foot) {
        likely = Weight.on(foot);
        trust = Trust.KNOWN;
        Move stated = move.leaving(likely);
        last = Optional.of(stated);
        return stated;
    }

    /** What was read may not be what is danced. */
    void doubt() {
        trust = Trust.DOUBTED;
        last = Optional.empty();
    }

    /** Nothing is known any more. */
    void lose() {
        likely = Weight.UNKNOWN;
        doubt();
    }
}
