package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Transfer;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What verb, part of the foot and place words come to together. One verb or family of verbs is one method, so that
 * a new one needs a row in {@code words.tsv} and a case here.
 */
final class ActionRules {
    private static final Set<Action> TAKE_WEIGHT = EnumSet.of(
            Action.BALL,
            Action.BEHIND,
            Action.CHANGE,
            Action.CLOSE,
            Action.CROSS,
            Action.DROP,
            Action.GRIND,
            Action.HINGE,
            Action.IN,
            Action.INPLACE,
            Action.LOCK,
            Action.LUNGE,
            Action.OUT,
            Action.PIVOT,
            Action.PRESS,
            Action.PRISSY,
            Action.RECOVER,
            Action.ROCK,
            Action.SKATE,
            Action.STEP,
            Action.STOMP,
            Action.SWAY,
            Action.UNWIND,
            Action.WALK);
    private static final Set<Action> SPLIT = EnumSet.of(
            Action.APPLEJACK,
            Action.HEELS_IN,
            Action.JUMP,
            Action.KNEE_POP,
            Action.RETURN_CENTRE,
            Action.SPLIT_HEELS,
            Action.SPLIT_TOES,
            Action.SWIVEL_HEELS,
            Action.SWIVEL_TOES,
            Action.SWIVET,
            Action.TOES_IN,
            Action.TWIST);

    private static final Set<Action> BODY = EnumSet.of(
            Action.HOLD, Action.CLAP, Action.SHIMMY, Action.DIP, Action.HIPROLL, Action.BODYROLL, Action.SPIN);

    private final Set<String> places;
    private final String part;

    private ActionRules(Set<String> places, String part) {
        this.places = places;
        this.part = part;
    }

    /** An action and its direction. */
    record Meaning(Action action, Direction direction) {}

    /** What a verb means with these places; empty when the words do not go together. */
    static Optional<Meaning> meaning(String verb, String part, Set<String> places) {
        return new ActionRules(places, part).verb(verb);
    }

    /** Actions of the body, of both feet, or of no foot in particular. */
    static boolean needsNoFoot(Action action) {
        return SPLIT.contains(action) || BODY.contains(action);
    }

    /** Movements that go to a side and on to another one. */
    static boolean swings(Action action) {
        return SPLIT.contains(action) || action == Action.FAN || action == Action.BUMP;
    }

    /** Movements of heels or toes that travel on with the other end of the feet. */
    static boolean swivels(Action action) {
        return action == Action.SWIVEL_HEELS || action == Action.SWIVEL_TOES;
    }

    /** "Swivel heels right, toes right": the same with the part of the feet that is now named. */
    static Action swungOn(Action before, String part) {
        if (!swivels(before) || part.isEmpty()) {
            return before;
        }
        return part.equals("toe") ? Action.SWIVEL_TOES : Action.SWIVEL_HEELS;
    }

    static Transfer transfer(Action action) {
        if (TAKE_WEIGHT.contains(action)) {
            return Transfer.FULL;
        }
        return SPLIT.contains(action) ? Transfer.SPLIT : Transfer.NONE;
    }

    private Optional<Meaning> verb(String verb) {
        return switch (verb) {
            case "step" -> step();
            case "walk" -> is(Action.WALK, where(Direction.FWD));
            case "walkaround" -> is(Action.WALK, Direction.TURN);
            case "cross" -> cross();
            case "close" -> is(Action.CLOSE, Direction.TOGETHER);
            case "ball" -> ball();
            case "lock" -> is(Action.LOCK, has("over") ? Direction.OVER : Direction.BEHIND);
            case "rock" -> is(Action.ROCK, where(Direction.FWD));
            case "recover" -> !part.isEmpty() && has("centre") ? step() : is(Action.RECOVER, Direction.PLACE);
            case "touch" -> touch();
            case "toe" -> has("down") ? dropped("toe") : is(Action.TOE, where(Direction.BACK));
            case "heel" -> has("down") ? dropped("heel") : is(Action.HEEL, where(Direction.FWD));
            case "drop" -> drop();
            case "jump" -> is(Action.JUMP, jump());
            case "swivel", "split", "fan", "twist" -> bothFeet(verb);
            case "hold", "clap", "shimmy", "dip", "hiproll", "bodyroll", "kneepop" -> body(verb);
            default -> swing(verb);
        };
    }

    private Optional<Meaning> step() {
        if (part.equals("ball") && !has("behind") && !has("over")) {
            return ball();
        }
        if (!part.isEmpty() && has("centre")) {
            return is(Action.FAN, part.equals("heel") ? Direction.HEEL_IN : Direction.TOE_IN);
        }
        if (!part.isEmpty() && !part.equals("ball")) {
            return has("down") ? dropped(part) : touch();
        }
        if (has("over")) {
            return is(Action.CROSS, Direction.OVER);
        }
        if (has("behind") || has("third")) {
            return is(Action.BEHIND, has("third") ? Direction.THIRD : Direction.BEHIND);
        }
        if (has("together")) {
            return is(Action.CLOSE, Direction.TOGETHER);
        }
        if (has("out")) {
            return is(Action.OUT, where(Direction.SIDE));
        }
        if (has("in")) {
            return is(Action.IN, where(Direction.CENTRE));
        }
        return is(has("place") ? Action.INPLACE : Action.STEP, where(Direction.PLACE));
    }

    /** "Cross left toe over right": a toe that is only put there. */
    private Optional<Meaning> cross() {
        if (part.equals("toe") && !has("behind")) {
            return is(Action.TOE, Direction.OVER);
        }
        return has("behind") ? is(Action.BEHIND, Direction.BEHIND) : is(Action.CROSS, Direction.OVER);
    }

    private Optional<Meaning> ball() {
        return has("behind") ? is(Action.BEHIND, Direction.BEHIND) : is(Action.BALL, where(Direction.PLACE));
    }

    private Optional<Meaning> touch() {
        Direction direction = where(Direction.TOGETHER);
        if (part.isEmpty() || direction == Direction.TOGETHER) {
            return is(Action.TOUCH, direction);
        }
        return is(part.equals("heel") ? Action.HEEL : Action.TOE, direction);
    }

    /** With both feet at once: apart, together, or to another place. */
    private Direction jump() {
        return has("out") ? Direction.OUT : has("in") ? Direction.TOGETHER : where(Direction.PLACE);
    }

    /** Without its part it is the other one where toe or heel stand already, else a step on the spot. */
    private Optional<Meaning> drop() {
        return part.isEmpty() ? is(Action.STEP, Direction.DOWN) : dropped(part);
    }

    /** "Toe forward, heel down": the weight comes onto the whole foot. */
    private static Optional<Meaning> dropped(String lowered) {
        return is(Action.DROP, lowered.equals("heel") ? Direction.HEEL : Direction.TOE);
    }

    private Optional<Meaning> bothFeet(String verb) {
        boolean toes = part.equals("toe");
        Direction direction = where(Direction.CENTRE);
        return switch (verb) {
            case "swivel" -> is(toes ? Action.SWIVEL_TOES : Action.SWIVEL_HEELS, direction);
            case "split" -> is(toes ? Action.SPLIT_TOES : Action.SPLIT_HEELS, Direction.OUT);
            case "twist" -> is(Action.TWIST, direction);
            default ->
                is(
                        Action.FAN,
                        toes ? fan(Direction.TOE_IN, Direction.TOE_OUT) : fan(Direction.HEEL_IN, Direction.HEEL_OUT));
        };
    }

    private Direction fan(Direction inwards, Direction outwards) {
        return has("in") ? inwards : outwards;
    }

    private Optional<Meaning> body(String verb) {
        return switch (verb) {
            case "hold" -> is(Action.HOLD, Direction.NONE);
            case "clap" -> has("down") && !part.isEmpty() ? dropped(part) : is(Action.CLAP, Direction.NONE);
            case "shimmy" -> is(Action.SHIMMY, Direction.NONE);
            case "dip" -> is(Action.DIP, Direction.NONE);
            case "hiproll" -> is(Action.HIPROLL, Direction.NONE);
            case "kneepop" -> is(Action.KNEE_POP, Direction.UP);
            default -> is(Action.BODYROLL, Direction.NONE);
        };
    }

    /** Verbs whose word is the action's word; each has its usual direction where none is written. */
    private Optional<Meaning> swing(String verb) {
        if (verb.equals("stomp") && has("up")) {
            return is(Action.STOMPUP, Direction.PLACE);
        }
        return Action.named(verb).map(action -> new Meaning(action, where(usual(action))));
    }

    private static Direction usual(Action action) {
        return switch (action) {
            case POINT, LUNGE -> Direction.SIDE;
            case FLICK -> Direction.BACK;
            case HOOK -> Direction.OVER_SHIN;
            case HITCH -> Direction.UP;
            case SWEEP -> Direction.BACK_TO_FRONT;
            case DRAG, SLIDE, TAP -> Direction.TOGETHER;
            case SKATE -> Direction.FWD_DIAG;
            case GRIND -> Direction.HEEL_FWD;
            case STOMP, STOMPUP, PIVOT, UNWIND, CHANGE -> Direction.PLACE;
            case SPIN, BUMP, SWAY -> Direction.NONE;
            default -> Direction.FWD;
        };
    }

    /** The direction that the place words name, or the usual one. */
    private Direction where(Direction usual) {
        if (has("fwd") && has("back")) {
            return wayRound();
        }
        if (has("diag")) {
            return has("back") ? Direction.BACK_DIAG : Direction.FWD_DIAG;
        }
        if (has("centre")) {
            return has("fwd") ? Direction.FWD_CENTRE : has("back") ? Direction.BACK_CENTRE : Direction.CENTRE;
        }
        if (has("over")) {
            return usual == Direction.OVER_SHIN ? usual : Direction.OVER;
        }
        for (Direction plain : PLAIN) {
            if (has(plain.word())) {
                return plain;
            }
        }
        return usual;
    }

    /** "From front to back": the place that is named first is where it begins. */
    private Direction wayRound() {
        List<String> inOrder = List.copyOf(places);
        return inOrder.indexOf("fwd") < inOrder.indexOf("back") ? Direction.FRONT_TO_BACK : Direction.BACK_TO_FRONT;
    }

    private static final Direction[] PLAIN = {
        Direction.BEHIND,
        Direction.TOGETHER,
        Direction.FWD,
        Direction.BACK,
        Direction.SIDE,
        Direction.PLACE,
        Direction.RIGHT,
        Direction.LEFT,
        Direction.UP,
        Direction.DOWN
    };

    private boolean has(String place) {
        return places.contains(place);
    }

    private static Optional<Meaning> is(Action action, Direction direction) {
        return Optional.of(new Meaning(action, direction));
    }
}
