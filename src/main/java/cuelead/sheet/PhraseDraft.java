package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.FigureRow;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.FigureCall;
import cuelead.sheet.Phrase.Remarks;
import cuelead.sheet.Phrase.TurnCall;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The words of one clause while they are gathered. */
final class PhraseDraft {
    /** "Bump hips forward": the way that is named wins over the side of the foot. */
    private static final Set<Direction> GOES =
            EnumSet.of(Direction.FWD, Direction.BACK, Direction.FWD_DIAG, Direction.BACK_DIAG);

    private static final Set<String> AFTER_CROSS = Set.of("touch", "tap", "point", "rock");

    private final int column;
    private final List<Foot> feet = new ArrayList<>();
    private final List<Direction> ways = new ArrayList<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final List<Term> unknown = new ArrayList<>();
    private Optional<FigureRow> row = Optional.empty();
    private Optional<Foot> onto = Optional.empty();
    private Optional<Foot> towards = Optional.empty();
    private Optional<TurnCall> turn = Optional.empty();
    private Optional<Foot> turnSide = Optional.empty();
    private OptionalInt openTurn = OptionalInt.empty();
    private OptionalInt openNumber = OptionalInt.empty();
    private OptionalInt duration = OptionalInt.empty();
    private Remarks remarks = Remarks.NONE;
    private String verb = "";
    private String part = "";
    private int repeats = 1;
    private boolean paddles;
    private boolean mayBeTitle;
    private boolean leads;

    PhraseDraft(int column) {
        this.column = column;
    }

    int column() {
        return column;
    }

    void figure(FigureRow found) {
        row = Optional.of(found);
    }

    void verb(String word) {
        boolean crossedFirst = verb.equals("cross") && AFTER_CROSS.contains(word);
        if (crossedFirst) {
            places.add(places.contains("behind") ? "behind" : "over");
        }
        verb = word;
    }

    /** One verb a clause, but "cross touch" and "cross rock" are one action, and "drop heel" comes in any order. */
    boolean takesVerb(String word) {
        boolean figureGiven = row.isPresent();
        return !figureGiven && (verb.isEmpty() || (verb.equals("cross") && AFTER_CROSS.contains(word)));
    }

    void foot(Foot foot) {
        feet.add(foot);
    }

    /** A foot of a list, and where it goes. */
    void listed(Foot foot, Direction way) {
        feet.add(foot);
        ways.add(way);
    }

    void part(String word) {
        part = word;
    }

    void place(String word) {
        places.add(word);
    }

    void onto(Foot foot) {
        onto = Optional.of(foot);
    }

    void towards(Foot side) {
        towards = Optional.of(side);
    }

    void turn(int degrees, Optional<Foot> side, int turnColumn) {
        turn = Optional.of(new TurnCall(degrees, side, turnColumn));
    }

    void paddle() {
        paddles = true;
    }

    void turnSide(Foot side) {
        turnSide = Optional.of(side);
    }

    /** A turn whose amount the figure's name tells. */
    boolean namesTurn() {
        return row.isPresent() && row.get().netTurn().degrees() != 0;
    }

    boolean turns() {
        return turn.isPresent();
    }

    void openTurn(int turnColumn) {
        openTurn = OptionalInt.of(turnColumn);
    }

    void duration(int counts) {
        duration = OptionalInt.of(counts);
    }

    void repeats(int times) {
        repeats = Math.max(1, times);
    }

    /** Whether nothing was said yet, so that a number tells how often what follows is danced. */
    boolean isEmpty() {
        return !hasAction() && !hasFoot() && turn.isEmpty();
    }

    /** A bare number: of times with the body's actions ("2 claps"), else unread. */
    void number(int value) {
        openNumber = OptionalInt.of(value);
    }

    void weight(Foot foot) {
        remarks = remarks.and(new Remarks(Optional.empty(), Optional.of(foot), false, false));
    }

    void noWeight() {
        remarks = remarks.and(new Remarks(Optional.empty(), Optional.empty(), true, false));
    }

    void remark(Remark remark) {
        remarks = remarks.and(remark.remarks());
        duration = remark.duration().isPresent() ? remark.duration() : duration;
    }

    void unknown(Term term) {
        unknown.add(term);
    }

    List<Term> unknown() {
        return unknown;
    }

    List<Foot> feet() {
        return feet;
    }

    Remarks remarks() {
        return remarks;
    }

    boolean isFigure() {
        return row.isPresent();
    }

    boolean hasVerb() {
        return !verb.isEmpty();
    }

    /** Whether a colon or a dash stands behind it, so that it may be the title of what follows. */
    void parted(boolean byColon) {
        mayBeTitle = byColon;
    }

    boolean hasFoot() {
        return !feet.isEmpty() || onto.isPresent();
    }

    /** "Drag L to R": towards the other foot, not to that side. */
    boolean drawsTo(Foot other) {
        return (verb.equals("drag") || verb.equals("slide")) && feet.contains(other.other());
    }

    boolean hasAction() {
        return row.isPresent() || !verb.isEmpty() || !part.isEmpty() || !places.isEmpty();
    }

    /** "Centre", "back to centre", "to the left". */
    boolean isOnlyPlaces() {
        return !hasFoot()
                && row.isEmpty()
                && verb.isEmpty()
                && part.isEmpty()
                && turn.isEmpty()
                && !places.isEmpty()
                && unknown.isEmpty();
    }

    /** Where the same movement goes on to. */
    Direction swing() {
        if (towards.isPresent()) {
            return towards.get() == Foot.LEFT ? Direction.LEFT : Direction.RIGHT;
        }
        return places.contains("out") ? Direction.OUT : places.contains("in") ? Direction.IN : Direction.CENTRE;
    }

    /** "Starting with your left foot": it tells the foot of what follows. */
    boolean isOnlyLead() {
        return leads && hasFoot() && !hasAction() && turn.isEmpty() && unknown.isEmpty();
    }

    void leads() {
        leads = true;
    }

    boolean isOnlyFeet() {
        return hasFoot() && !hasAction() && turn.isEmpty() && openTurn.isEmpty() && unknown.isEmpty();
    }

    boolean isOnlyRemarks() {
        return !hasFoot() && !hasAction() && turn.isEmpty() && openTurn.isEmpty() && openNumber.isEmpty();
    }

    Optional<FigureCall> figureCall() {
        return row.map(found -> new FigureCall(found, leadFeet(found), ways, figureTurn(found)));
    }

    /** "Vine to the right" leads with the right foot. */
    private List<Foot> leadFeet(FigureRow found) {
        boolean sideways = found.travel().equals("left") || found.travel().equals("right");
        Optional<Foot> travels = found.travelsAgainstItsLead() ? towards.map(Foot::other) : towards;
        Optional<Foot> side = sideways ? travels.or(() -> onto) : onto;
        return feet.isEmpty() ? side.map(List::of).orElse(List.of()) : List.copyOf(feet);
    }

    private Optional<TurnCall> figureTurn(FigureRow found) {
        if (turn.isPresent()) {
            return turn.map(call -> new TurnCall(call.degrees(), call.side().or(() -> turnSide), call.column()));
        }
        int degrees = Math.abs(found.netTurn().degrees());
        return degrees == 0 ? Optional.empty() : Optional.of(new TurnCall(degrees, turnSide.or(() -> towards), column));
    }

    /** The single action that these words mean; empty where they mean none. */
    Optional<ActionCall> action() {
        if (openTurn.isPresent()) {
            return Optional.empty();
        }
        if (!hasAction()) {
            Action turning = paddles ? Action.PIVOT : Action.SPIN;
            return turn.map(call -> new ActionCall(onto, turning, Direction.TURN, turn, ActionRules.transfer(turning)));
        }
        if (verb.equals("walkaround") && turn.isEmpty()) {
            return Optional.empty();
        }
        boolean stands = verb.isEmpty() && !part.isEmpty();
        String doing = stands ? part : verb.isEmpty() ? "step" : verb;
        return ActionRules.meaning(doing, stands ? "" : part, places).map(this::call);
    }

    private ActionCall call(ActionRules.Meaning meaning) {
        Action action = meaning.action();
        Optional<Foot> foot = feet.stream().findFirst().or(() -> onto);
        boolean sideways = action == Action.SWAY || action == Action.BUMP;
        if (sideways && foot.isEmpty()) {
            foot = towards;
        }
        Direction direction = towards.or(() -> feet.stream().findFirst())
                .flatMap(side -> lateral(action, side))
                .filter(side -> !GOES.contains(meaning.direction()))
                .orElse(meaning.direction());
        boolean noFoot = ActionRules.needsNoFoot(action);
        return new ActionCall(noFoot ? Optional.empty() : foot, action, direction, turn, transfer(action));
    }

    private Transfer transfer(Action action) {
        return remarks.noWeight() ? Transfer.NONE : ActionRules.transfer(action);
    }

    /** Hips and heels go to a side, feet do not. */
    static Optional<Direction> lateral(Action action, Foot side) {
        return switch (action) {
            case SWAY, BUMP, SWIVEL_HEELS, SWIVEL_TOES, TWIST, APPLEJACK, SWIVET ->
                Optional.of(side == Foot.LEFT ? Direction.LEFT : Direction.RIGHT);
            default -> Optional.empty();
        };
    }

    Phrase phrase(Optional<ActionCall> action, boolean readable) {
        int times = openNumber.isPresent() && action.isPresent() ? openNumber.getAsInt() : repeats;
        return new Phrase(
                column,
                figureCall(),
                action,
                Math.max(1, Math.min(times, 64)),
                duration,
                remarks,
                readable,
                mayBeTitle);
    }
}
