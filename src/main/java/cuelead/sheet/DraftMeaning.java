package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.FigureRow;
import cuelead.dance.Foot;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.FigureCall;
import cuelead.sheet.Phrase.Remarks;
import cuelead.sheet.Phrase.TurnCall;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the gathered words of a clause come to: a figure, or a single action. */
record DraftMeaning(
        int column,
        List<Foot> feet,
        List<Direction> ways,
        Set<String> places,
        Optional<Foot> onto,
        Optional<Foot> towards,
        Optional<TurnCall> turn,
        Optional<Foot> turnSide,
        Remarks remarks,
        String verb,
        String part,
        boolean paddles) {

    /** "Bump hips forward": the way that is named wins over the side of the foot. */
    private static final Set<Direction> GOES =
            EnumSet.of(Direction.FWD, Direction.BACK, Direction.FWD_DIAG, Direction.BACK_DIAG);

    /** "Straighten up", "go down": no foot is moved. */
    private static final Set<String> UP_DOWN = Set.of("up", "down");

    FigureCall figure(FigureRow found) {
        return new FigureCall(FigureWays.danced(found, places), leadFeet(found), ways, figureTurn(found));
    }

    /** "Vine to the right" leads with the right foot. */
    private List<Foot> leadFeet(FigureRow found) {
        boolean sideways = found.travel().equals("left") || found.travel().equals("right");
        Optional<Foot> travels = found.travelsAgainstItsLead() ? towards.map(Foot::other) : towards;
        Optional<Foot> side = sideways ? travels.or(() -> onto) : onto;
        return feet.isEmpty() ? side.map(List::of).orElse(List.of()) : withoutSide(found);
    }

    /** "Vine right R-L-R": the side, then a foot for each step. */
    private List<Foot> withoutSide(FigureRow found) {
        boolean twice = feet.size() > 2 && feet.get(0) == feet.get(1) && feet.get(1) != feet.get(2);
        boolean lists = twice && ListedFeet.areAll(feet.size() - 1, found);
        return List.copyOf(lists ? feet.subList(1, feet.size()) : feet);
    }

    private Optional<TurnCall> figureTurn(FigureRow found) {
        if (turn.isPresent()) {
            return turn.map(call -> new TurnCall(call.degrees(), call.side().or(() -> turnSide), call.column()));
        }
        int degrees = Math.abs(found.netTurn().degrees());
        return degrees == 0 ? Optional.empty() : Optional.of(new TurnCall(degrees, turnSide.or(() -> towards), column));
    }

    /** The single action; empty where the words mean none. {@code named}: whether anything but a turn is said. */
    Optional<ActionCall> action(boolean named) {
        if (!named) {
            return turn.map(this::bareTurn);
        }
        if (verb.equals("walkaround") && turn.isEmpty() && feet.isEmpty()) {
            return Optional.empty();
        }
        if (isOfBothFeet() && (places.equals(Set.of("together")) || places.equals(Set.of("in")))) {
            return Optional.of(bothFeet(part.equals("heel") ? Action.HEELS_IN : Action.TOES_IN, Direction.IN));
        }
        if (isOfBothFeet() && places.equals(Set.of("out"))) {
            return Optional.of(bothFeet(part.equals("heel") ? Action.SPLIT_HEELS : Action.SPLIT_TOES, Direction.OUT));
        }
        if (verb.isEmpty() && part.isEmpty() && feet.isEmpty() && UP_DOWN.containsAll(places)) {
            return Optional.empty();
        }
        boolean stands = verb.isEmpty() && !part.isEmpty();
        boolean leaps = verb.equals("jump") && (!feet.isEmpty() || onto.isPresent());
        String doing = stands ? part : verb.isEmpty() || leaps ? "step" : walked();
        return ActionRules.meaning(doing, stands ? "" : part, goes()).map(this::call);
    }

    /** "Step your right foot out to the right side" is a step to the side, "R out to side" may be half of out-out. */
    private Set<String> goes() {
        if (!verb.equals("step") || !places.containsAll(Set.of("out", "side"))) {
            return places;
        }
        Set<String> aside = new LinkedHashSet<>(places);
        aside.remove("out");
        return aside;
    }

    /** "Walk full turn right: R, L, R, L" goes around, "walk around R, L, R, L making a half turn" is walked, foot by foot. */
    private String walked() {
        boolean far =
                turn.filter(call -> call.degrees() >= FEWEST_AROUND_DEGREES).isPresent();
        if (verb.equals("walk") && feet.isEmpty() && far) {
            return "walkaround";
        }
        return verb.equals("walkaround") && turn.isEmpty() ? "walk" : verb;
    }

    private static final int FEWEST_AROUND_DEGREES = 180;

    /** "R 1/4 turn": the side of the turn, for nothing else is said of the foot. */
    private ActionCall bareTurn(TurnCall call) {
        Action turning = paddles ? Action.PIVOT : Action.SPIN;
        boolean sided = call.side().isPresent() || feet.isEmpty();
        TurnCall told = sided ? call : new TurnCall(call.degrees(), Optional.of(feet.get(0)), call.column());
        return new ActionCall(onto, turning, Direction.TURN, Optional.of(told), ActionRules.transfer(turning));
    }

    /** "Heels together", "bring heels in", "heels apart". */
    private boolean isOfBothFeet() {
        boolean both = feet.isEmpty() && onto.isEmpty() && !part.isEmpty() && !part.equals("ball");
        return both && (verb.isEmpty() || verb.equals("step") || verb.equals("close"));
    }

    private ActionCall bothFeet(Action action, Direction direction) {
        return new ActionCall(Optional.empty(), action, direction, turn, ActionRules.transfer(action));
    }

    private ActionCall call(ActionRules.Meaning meaning) {
        Action action = meaning.action();
        Optional<Foot> foot = feet.stream().findFirst().or(() -> onto);
        boolean sideways = action == Action.SWAY || action == Action.BUMP;
        if (sideways && foot.isEmpty()) {
            foot = towards;
        }
        Direction direction = towards.or(() -> feet.stream().findFirst())
                .or(() -> sideways ? onto : Optional.empty())
                .flatMap(side -> lateral(action, side))
                .filter(side -> !GOES.contains(meaning.direction()) || (onto.isPresent() && feet.isEmpty()))
                .orElse(meaning.direction());
        boolean noFoot = ActionRules.needsNoFoot(action);
        ActionCall call =
                new ActionCall(noFoot ? Optional.empty() : foot, action, direction, turn, ActionRules.transfer(action));
        return remarks.noWeight() ? call.withoutWeight() : call;
    }

    /** Where a movement that swings goes on to. */
    Direction swing() {
        if (towards.isPresent()) {
            return towards.get() == Foot.LEFT ? Direction.LEFT : Direction.RIGHT;
        }
        if (places.isEmpty() && !feet.isEmpty()) {
            return feet.get(0) == Foot.LEFT ? Direction.LEFT : Direction.RIGHT;
        }
        return SWUNG.entrySet().stream()
                .filter(way -> places.contains(way.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Direction.CENTRE);
    }

    private static final Map<String, Direction> SWUNG =
            Map.of("out", Direction.OUT, "in", Direction.IN, "fwd", Direction.FWD, "back", Direction.BACK);

    /** Hips and heels go to a side, feet do not. */
    static Optional<Direction> lateral(Action action, Foot side) {
        return switch (action) {
            case SWAY, BUMP, SWIVEL_HEELS, SWIVEL_TOES, TWIST, APPLEJACK, SWIVET ->
                Optional.of(side == Foot.LEFT ? Direction.LEFT : Direction.RIGHT);
            default -> Optional.empty();
        };
    }
}
