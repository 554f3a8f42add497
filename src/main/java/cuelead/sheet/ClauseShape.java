package cuelead.sheet;

import cuelead.dance.Foot;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What sort of clause the words make that were gathered: only feet, only places, only a turn, or an action.
 *
 * @param figure     whether the name of a figure stands in it
 * @param turns      whether an amount of a turn does
 * @param openTurn   whether a turn without an amount does
 * @param openNumber whether a number does that tells nothing by itself
 * @param strange    whether words do that are not known
 * @param told       what its small words tell
 * @param weight     the foot of its weight note
 */
record ClauseShape(
        List<Foot> feet,
        Optional<Foot> onto,
        boolean figure,
        String verb,
        String part,
        Set<String> places,
        boolean turns,
        boolean openTurn,
        boolean openNumber,
        boolean strange,
        Set<Told> told,
        Optional<Foot> weight) {
    /** Heels and toes go there by themselves; to a side or the centre they go on from another place. */
    private static final Set<String> IN_OUT = Set.of("in", "out", "together");

    private static final Set<String> BACK_TO = Set.of("back", "fwd", "place", "centre");

    /** What small words tell of a clause. */
    enum Told {
        /** "Starting with": its foot begins what follows. */
        LEADS,
        /** "Moving": where it goes. */
        TRAVELS,
        /** "Heels": of both feet. */
        BOTH_FEET,
        /** Arms, head, knees. */
        OF_BODY,
        /** How a foot is: "is free". */
        RESTS,
        /** "Shifting your weight to": where an action leaves it. */
        SHIFTS,
        /** "Bring R to L". */
        BRINGS,
        /** "On 3", "on count 7". */
        ON_COUNT
    }

    boolean hasFoot() {
        return !feet.isEmpty() || onto.isPresent();
    }

    boolean hasAction() {
        return figure || !verb.isEmpty() || !part.isEmpty() || !places.isEmpty();
    }

    boolean isOnlyState() {
        return told.contains(Told.RESTS) && isOnlyFeet();
    }

    /** "1/4 turn R on 3": a turn on a count of what stands before. */
    boolean isTurnOnCount() {
        return told.contains(Told.ON_COUNT) && isOnlyTurn();
    }

    /** The foot onto which the weight comes meanwhile: "shifting your weight to the left foot". */
    Optional<Foot> shiftsTo() {
        Optional<Foot> named = feet.size() == 1 ? Optional.of(feet.get(0)) : onto.or(() -> weight);
        return told.contains(Told.SHIFTS) && !figure && !turns ? named : Optional.empty();
    }

    /** Nothing is said but a turn. */
    boolean isOnlyTurn() {
        return turns && !hasAction() && !hasFoot();
    }

    /** "Centre", "back to centre", "to the left". */
    boolean isOnlyPlaces() {
        return !hasFoot() && !figure && verb.isEmpty() && part.isEmpty() && !turns && !places.isEmpty() && !strange;
    }

    /** "Both heels centre", "bring the toes back": a part of both feet that only goes somewhere. */
    boolean isOnlyParts() {
        boolean goes = verb.isEmpty() || verb.equals("step") || verb.equals("recover");
        boolean both = (part.equals("heel") || part.equals("toe")) && !turns && !figure;
        boolean somewhere = hasFoot()
                ? told.contains(Told.BOTH_FEET) && feet.size() == 1 && places.isEmpty()
                : !IN_OUT.containsAll(places);
        return goes && both && somewhere;
    }

    /** "Heels, toes": parts of both feet and nothing else; where they go was told before. */
    boolean isBarePart() {
        boolean only = verb.isEmpty() && !hasFoot() && places.isEmpty() && !turns && !figure;
        return only && told.contains(Told.BOTH_FEET) && !strange && (part.equals("heel") || part.equals("toe"));
    }

    /** "Starting with your left foot": it tells the foot of what follows. */
    boolean isOnlyLead() {
        return told.contains(Told.LEADS) && hasFoot() && !hasAction() && !turns && !strange;
    }

    /** "Moving back": it only tells where the action before it goes. */
    boolean isOnlyTravel() {
        return told.contains(Told.TRAVELS) && (isOnlyPlaces() || (isOnlyFeet() && feet.size() == 1));
    }

    /** "Left arm up", "look right": it moves no foot. */
    boolean isOnlyBody() {
        return told.contains(Told.OF_BODY) && !figure && verb.isEmpty() && part.isEmpty() && !turns;
    }

    /** "Back on right", "place the weight onto L": the foot that the weight goes to, where nothing else is said. */
    Optional<Foot> weightGoesTo() {
        boolean toStanding = verb.isEmpty() && onto.isPresent() && BACK_TO.containsAll(places);
        boolean stepped = (verb.isEmpty() || verb.equals("step")) && places.isEmpty();
        boolean only = !figure && part.isEmpty() && feet.isEmpty() && !turns;
        return !only ? Optional.empty() : toStanding ? onto : stepped ? weight : Optional.empty();
    }

    /** Whether it says all that an action needs, so that another word can only be styling. */
    boolean isClear() {
        boolean goes = !verb.isEmpty() && (!verb.equals("step") || !places.isEmpty());
        return goes || figure;
    }

    boolean isOnlyFeet() {
        return hasFoot() && !hasAction() && !turns && !openTurn && !strange;
    }

    /** A foot that goes on with what is danced before, perhaps with the turn of all. */
    boolean isOnlyFeetTurning() {
        return hasFoot() && !hasAction() && !openTurn && !strange;
    }

    boolean isOnlyRemarks() {
        return !hasFoot() && !hasAction() && !turns && !openTurn && !openNumber;
    }

    /** Without a single word of the trade, so that it may be said beside the dance. */
    boolean isAside() {
        boolean says = hasFoot() || hasAction() || turns || openTurn || openNumber;
        return isOnlyBody() || !says;
    }

    /** The foot that is named already, named again: "RF forward diagonal right". */
    boolean isSideOf(Foot foot) {
        return !figure && !feet.isEmpty() && feet.get(feet.size() - 1) == foot;
    }

    /** It goes to a side: "LF sway the hips left". */
    boolean sways() {
        return verb.equals("sway") || verb.equals("bump");
    }

    /** A foot cannot step twice: "long step R with R" is a step to the right. */
    boolean stepsWith(Foot foot) {
        return isSideOf(foot)
                && places.isEmpty()
                && (verb.equals("step") || verb.equals("slide") || verb.equals("rock"));
    }
}
