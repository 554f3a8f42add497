package cuelead.dance;

import java.util.Optional;

/**
 * One action of a dance.
 *
 * @param count       when, within its section
 * @param foot        which foot; empty for a hold, a clap, an action of the body or of both feet
 * @param action      what it does
 * @param direction   where to; read after the turn
 * @param turn        how far the dancer turns on this count
 * @param transfer    whether the weight moves
 * @param weightAfter where the weight is afterwards
 * @param line        1-based line of the sheet where it is written; 0 when made without a sheet
 * @param column      1-based column on that line; 0 when not known
 */
public record Step(
        Count count,
        Optional<Foot> foot,
        Action action,
        Direction direction,
        Turn turn,
        Transfer transfer,
        Weight weightAfter,
        int line,
        int column) {
    /** The same action, turning so much more. */
    public Step turnedBy(Turn more) {
        return new Step(count, foot, action, direction, turn.plus(more), transfer, weightAfter, line, column);
    }

    /** The same action, with the weight elsewhere afterwards. */
    public Step with(Weight after) {
        return new Step(count, foot, action, direction, turn, transfer, after, line, column);
    }

    /** The same action, written at another place of the sheet. */
    public Step writtenAt(int otherLine, int otherColumn) {
        return new Step(count, foot, action, direction, turn, transfer, weightAfter, otherLine, otherColumn);
    }
}
