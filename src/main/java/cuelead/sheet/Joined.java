package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.Joint;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Two actions on one count: "step R to side and sway right", "recover onto R crossing over L", "step L dragging R". */
final class Joined {
    /** What the rest of the dancer does while a foot steps. */
    private static final Set<Action> BESIDE = EnumSet.of(
            Action.CLAP,
            Action.BUMP,
            Action.SWAY,
            Action.SHIMMY,
            Action.HIPROLL,
            Action.BODYROLL,
            Action.KNEE_POP,
            Action.DIP,
            Action.BOUNCE,
            Action.SWEEP,
            Action.DRAG,
            Action.SLIDE);

    /** What the free foot does behind any step. */
    private static final Set<Action> TRAILS = EnumSet.of(Action.SWEEP, Action.DRAG);

    private static final Set<Action> ALONG = EnumSet.of(Action.HITCH, Action.FLICK, Action.HOOK, Action.KICK);

    private Joined() {}

    /** Whether the second may be danced on the count of the first. */
    static boolean mayShare(Phrase first, Phrase second) {
        if (first.action().isEmpty()
                || second.action().isEmpty()
                || second.figure().isPresent()) {
            return false;
        }
        ActionCall one = first.action().get();
        ActionCall other = second.action().get();
        if (second.joint() == Joint.PARTED) {
            boolean trails = TRAILS.contains(other.action())
                    && one.transfer().takesWeight()
                    && !other.foot().equals(one.foot());
            return trails || goesAlong(one, other);
        }
        if (one.isBareTurn() || other.isBareTurn()) {
            return false;
        }
        boolean sameFoot =
                other.foot().isEmpty() || one.foot().isEmpty() || one.foot().equals(other.foot());
        if (second.joint() == Joint.LINKED) {
            return BESIDE.contains(other.action()) || (sameFoot && isPutDown(one, other));
        }
        return BESIDE.contains(other.action()) || ALONG.contains(other.action()) || (sameFoot && isOneStep(one, other));
    }

    /** "RF step to the side, sway the hips right": with the foot that steps. */
    private static boolean goesAlong(ActionCall one, ActionCall other) {
        boolean hips = other.action() == Action.SWAY || other.action() == Action.BUMP;
        return hips
                && one.transfer().takesWeight()
                && other.foot().isPresent()
                && other.foot().equals(one.foot());
    }

    /** "Cross right foot behind left and step", "bring it home and step on it": the foot that goes there is stepped on. */
    private static boolean isPutDown(ActionCall one, ActionCall other) {
        boolean goesThere = TRAILED.contains(one.action())
                || (PLACED.contains(one.action()) && one.transfer().takesWeight());
        return goesThere
                && other.action() == Action.STEP
                && other.direction() == Direction.PLACE
                && other.turn().isEmpty();
    }

    private static final Set<Action> TRAILED = EnumSet.of(Action.SLIDE, Action.DRAG, Action.SWEEP);
    private static final Set<Action> PLACED = EnumSet.of(Action.CROSS, Action.BEHIND, Action.CLOSE);

    /** "Recover crossing over": one step that is described twice. */
    private static boolean isOneStep(ActionCall one, ActionCall other) {
        return one.transfer().equals(other.transfer()) && one.transfer().takesWeight();
    }

    /** The phrases in which those that got no count of their own have gone into the one before them. */
    static List<Phrase> of(List<Phrase> phrases, List<Integer> sizes) {
        List<Phrase> joined = new ArrayList<>(phrases);
        for (int i = 1; i < phrases.size(); i++) {
            if (sizes.get(i) == 0 && sizes.get(i - 1) > 0 && mayShare(phrases.get(i - 1), phrases.get(i))) {
                ActionCall one = phrases.get(i - 1).action().orElseThrow();
                joined.set(
                        i - 1,
                        phrases.get(i - 1)
                                .with(both(one, phrases.get(i).action().orElseThrow())));
            }
        }
        return joined;
    }

    /** "Slide left up beside right and step", "sweep right behind left and step". */
    private static ActionCall steppedOn(ActionCall one) {
        boolean sweeps = one.action() == Action.SWEEP;
        Action action = !sweeps
                ? one.action()
                : one.direction() == Direction.BEHIND
                        ? Action.BEHIND
                        : one.direction() == Direction.OVER ? Action.CROSS : Action.STEP;
        return new ActionCall(one.foot(), action, one.direction(), one.turn(), Transfer.FULL);
    }

    private static ActionCall both(ActionCall one, ActionCall other) {
        if (TRAILED.contains(one.action()) && isPutDown(one, other)) {
            return steppedOn(one);
        }
        Optional<Phrase.TurnCall> turn = one.turn().or(other::turn);
        boolean plainStep = one.action() == Action.STEP || one.action() == Action.INPLACE;
        if (plainStep && one.direction() != Direction.FWD && other.action() == Action.SWAY) {
            Optional<Foot> foot = one.foot().or(other::foot);
            Direction way = foot.flatMap(side -> DraftMeaning.lateral(Action.SWAY, side))
                    .filter(side -> other.direction() == Direction.NONE)
                    .orElse(other.direction());
            return new ActionCall(foot, Action.SWAY, way, turn, other.transfer());
        }
        boolean placed = one.direction() != Direction.PLACE && one.direction() != Direction.NONE;
        boolean described = isOneStep(one, other) && !placed && one.action() != Action.RECOVER;
        Direction direction = described ? other.direction() : one.direction();
        return new ActionCall(one.foot(), one.action(), direction, turn, one.transfer());
    }
}
