package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Facing;
import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One written action or figure, before it is laid on counts.
 *
 * @param column   1-based column of its first word
 * @param figure   how it reads as a named figure
 * @param action   how it reads as a single action
 * @param repeats  how often it is danced
 * @param duration counts that it takes, where stated
 * @param remarks  what is said beside it
 * @param joint    how it hangs on the one before
 * @param left     words of it that are not understood
 * @param mayBeTitle whether it may only name what is written out behind it
 * @param mayBeLeft whether it needs no count: words beside the dance, an "&" that may be a step or only a link
 */
record Phrase(
        int column,
        Optional<FigureCall> figure,
        Optional<ActionCall> action,
        int repeats,
        OptionalInt duration,
        Remarks remarks,
        Joint joint,
        List<Term> left,
        boolean mayBeTitle,
        boolean mayBeLeft) {
    Phrase {
        left = List.copyOf(left);
    }

    /** What stands between a phrase and the one before it. */
    enum Joint {
        /** A comma, "then", a full stop. */
        PARTED,
        /** "And", "&", "+". */
        LINKED,
        /** Nothing, or "with": "recover onto R crossing over L". */
        RUN_ON
    }

    /** Whether it was understood; a hold stands for one that was not. */
    boolean readable() {
        return figure.isPresent() || action.isPresent();
    }

    /** "Make sure you finish on the left foot": strange words that name a foot or a place, and no action. */
    boolean isOnlySaid() {
        return !readable()
                && !left.isEmpty()
                && left.stream().allMatch(term -> term.is(Term.Kind.UNKNOWN) && !NotUnderstood.isWord(term.text()));
    }

    /**
     * A figure by its name, with the feet and the turn that are named with it.
     *
     * @param ways where each of the feet goes, {@link Direction#NONE} where that is not said; may be empty
     */
    record FigureCall(FigureRow row, List<Foot> feet, List<Direction> ways, Optional<TurnCall> turn) {
        FigureCall {
            feet = List.copyOf(feet);
            ways = List.copyOf(ways);
        }

        /** As it is danced in the quick rhythm, where that has fewer steps: a scissor on "1&2" has no hold. */
        Optional<FigureCall> quick() {
            return Figures.standard()
                    .row(row.figure().id() + QUICK)
                    .filter(other -> other.figure().pattern().size()
                            < row.figure().pattern().size())
                    .map(other -> new FigureCall(other, feet, ways, turn));
        }

        private static final String QUICK = "_sync";

        /**
         * How many of the listed feet go to one figure: one a step, or only the foot that begins it where it is danced by
         * one foot ("toe struts R, L") or the list is of none of its steps.
         */
        int feetEach() {
            if (feet.size() < 2) {
                return 1;
            }
            List<Foot> danced = row.figure().pattern().stream()
                    .flatMap(beat -> beat.foot().stream())
                    .toList();
            boolean byOne = danced.stream().distinct().count() == 1
                    && feet.stream().distinct().count() > 1;
            boolean listsSteps = !danced.isEmpty() && feet.size() % danced.size() == 0 && !byOne;
            return listsSteps ? danced.size() : 1;
        }
    }

    /** A single action; where the foot is not named it is the free one. */
    record ActionCall(
            Optional<Foot> foot, Action action, Direction direction, Optional<TurnCall> turn, Transfer transfer) {
        /** Danced with no weight: a stomp is then a stomp up. */
        ActionCall withoutWeight() {
            Action danced = action == Action.STOMP ? Action.STOMPUP : action;
            return new ActionCall(foot, danced, direction, turn, Transfer.NONE);
        }

        /** A clause that only turns: "turn 1/4 right", "paddle 1/8 turn left". */
        boolean isBareTurn() {
            return direction == Direction.TURN && (action == Action.SPIN || action == Action.PIVOT);
        }

        boolean isPaddle() {
            return action == Action.PIVOT && direction == Direction.TURN;
        }

        /** Steps on a curve: "walk around 3/4 turn right". */
        boolean isWalkAround() {
            return action == Action.WALK && direction == Direction.TURN;
        }
    }

    /** So many degrees, to the side where one is named. */
    record TurnCall(int degrees, Optional<Foot> side, int column) {
        Turn to(Foot named) {
            return new Turn(named == Foot.RIGHT ? degrees : -degrees);
        }
    }

    /** Where the dancer is said to face, where the weight is said to be, whether a restart is marked. */
    record Remarks(Optional<Stated<Facing>> clock, Optional<Foot> weight, boolean noWeight, boolean restart) {
        static final Remarks NONE = new Remarks(Optional.empty(), Optional.empty(), false, false);

        Remarks and(Remarks more) {
            return new Remarks(
                    more.clock.or(() -> clock),
                    more.weight.or(() -> weight),
                    noWeight || more.noWeight,
                    restart || more.restart);
        }
    }

    /** Something stated at a column. */
    record Stated<T>(T value, int column) {}

    Phrase repeated(int more) {
        return new Phrase(
                column, figure, action, repeats + more, duration, remarks, joint, left, mayBeTitle, mayBeLeft);
    }

    /** In the place of another one: at its column, and hanging on what it hangs on. */
    Phrase at(Phrase first) {
        return new Phrase(
                first.column,
                figure,
                action,
                repeats,
                duration,
                first.remarks.and(remarks),
                first.joint,
                left,
                mayBeTitle,
                mayBeLeft);
    }

    Phrase withRemarks(Remarks more) {
        return new Phrase(
                column,
                figure,
                more.noWeight() ? action.map(ActionCall::withoutWeight) : action,
                repeats,
                duration,
                remarks.and(more),
                joint,
                left,
                mayBeTitle,
                mayBeLeft);
    }

    /** Begun with this foot, where none is named. */
    Phrase ledBy(Foot foot) {
        return new Phrase(
                column,
                figure.map(call -> call.feet().isEmpty()
                        ? new FigureCall(call.row(), List.of(foot), call.ways(), call.turn())
                        : call),
                action.map(call -> call.foot().isEmpty() && !ActionRules.needsNoFoot(call.action())
                        ? new ActionCall(
                                Optional.of(foot), call.action(), call.direction(), call.turn(), call.transfer())
                        : call),
                repeats,
                duration,
                remarks,
                joint,
                left,
                mayBeTitle,
                mayBeLeft);
    }

    Phrase with(FigureCall more) {
        return new Phrase(
                column, Optional.of(more), action, repeats, duration, remarks, joint, left, mayBeTitle, mayBeLeft);
    }

    Phrase with(ActionCall other) {
        return new Phrase(
                column, figure, Optional.of(other), repeats, duration, remarks, joint, left, mayBeTitle, mayBeLeft);
    }
}
