package cuelead.sheet;

import cuelead.dance.Direction;
import cuelead.dance.FigureRow;
import cuelead.dance.Foot;
import cuelead.sheet.ClauseShape.Told;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.FigureCall;
import cuelead.sheet.Phrase.Joint;
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
    private static final Set<String> AFTER_CROSS = Set.of("touch", "tap", "point", "rock");

    /** What a heel or a toe does, however late it is said: "right heel forward dig". */
    private static final Set<String> OF_PARTS =
            Set.of("touch", "tap", "point", "dig", "drop", "swivel", "fan", "strut", "bounce", "lift", "grind");

    private static final Set<String> MEANWHILE = Set.of(
            "sweep", "drag", "slide", "hitch", "flick", "hook", "kick", "sway", "bump", "dip", "shimmy", "bodyroll");
    private static final Set<String> AHEAD =
            Set.of("touch", "tap", "point", "kick", "rock", "walk", "brush", "scuff", "dig", "press", "lunge");

    private final int column;
    private final List<Foot> feet = new ArrayList<>();
    private final List<Direction> ways = new ArrayList<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final List<Term> unknown = new ArrayList<>();
    private Optional<FigureRow> row = Optional.empty();
    private Optional<Foot> onto = Optional.empty();
    private Optional<Foot> towards = Optional.empty();
    private Optional<TurnCall> turn = Optional.empty();
    private Optional<TurnCall> turnInBrackets = Optional.empty();
    private Optional<Foot> turnSide = Optional.empty();
    private OptionalInt openTurn = OptionalInt.empty();
    private OptionalInt openNumber = OptionalInt.empty();
    private OptionalInt duration = OptionalInt.empty();
    private Remarks remarks = Remarks.NONE;
    private String verb = "";
    private int feetBeforeVerb;
    private String part = "";
    private int repeats = 1;
    private boolean repeatsFoot;
    private boolean paddles;
    /** Whether "cross" stands beside the verb: "cross rock", "cross touch". */
    private boolean crosses;

    private boolean mayBeTitle;
    private Optional<Foot> lineStart = Optional.empty();
    private final Set<Told> told = EnumSet.noneOf(Told.class);
    private Joint joint = Joint.PARTED;

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
        crosses |= crossedFirst || (verb.equals("rock") && word.equals("cross"));
        if (verb.equals("rock") && word.equals("cross")) {
            places.add("over");
            return;
        }
        if (crossedFirst) {
            places.add(places.contains("behind") ? "behind" : "over");
        }
        verb = word;
        feetBeforeVerb = feet.size();
    }

    /** One verb a clause, but "cross touch" and "cross rock" are one action, and "drop heel" comes in any order. */
    boolean takesVerb(String word) {
        if (word.equals("cross") && verb.equals("rock") && feet.size() == feetBeforeVerb && places.isEmpty()) {
            return row.isEmpty();
        }
        boolean crossed = verb.equals("cross") && AFTER_CROSS.contains(word) && feet.size() == feetBeforeVerb;
        return row.isEmpty() && (verb.isEmpty() ? !isToldByPart() || OF_PARTS.contains(word) : crossed);
    }

    /** "Right heel forward": all is said, and a step behind it is another one. */
    private boolean isToldByPart() {
        return !part.isEmpty() && !feet.isEmpty() && !places.isEmpty();
    }

    void foot(Foot foot) {
        feet.add(foot);
    }

    /** "Chasse R stepping R, L, R", "half turn shuffle L stepping R, L, R": what was named so far is the side, and the feet are listed behind. */
    void feetFollow() {
        if (feet.size() == 1 && turnSide.isEmpty()) {
            turnSide = Optional.of(feet.get(0));
        }
        feet.clear();
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
        if (crosses && word.equals("behind")) { // "cross rock L behind R"
            places.remove("over");
        }
        places.add(word);
    }

    /** What is danced "in front" of the dancer, and does not cross there. */
    boolean goesAhead() {
        boolean figure = row.isPresent() && row.get().travel().equals("fwd");
        return figure || !part.isEmpty() || AHEAD.contains(verb);
    }

    /** "Step R forward, sweeping L": the other foot's movement while one steps. */
    boolean isDoneMeanwhile() {
        return row.isEmpty() && MEANWHILE.contains(verb);
    }

    /** What a small word tells. */
    void told(Told what) {
        told.add(what);
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

    /** Said in brackets behind it: of this action or of all before. */
    void turnInBrackets(PhraseDraft said, Remark remark) {
        turnInBrackets = said.turn;
        remarks = remarks.and(remark.remarks());
    }

    /** The turn that may be meant of all feet that are listed; only one that has a side. */
    Optional<TurnCall> turnOfAll() {
        return turn.or(() -> turnInBrackets).filter(call -> call.side().isPresent());
    }

    void paddle() {
        paddles = true;
    }

    void turnSide(Foot side) {
        turnSide = Optional.of(side);
    }

    /** What is said around a figure's name, in standard words. */
    Set<String> around() {
        Set<String> words = new LinkedHashSet<>(places);
        if (!part.isEmpty()) {
            words.add(part);
        }
        ownTurn().flatMap(call -> TermCursor.fractionOf(call.degrees())).ifPresent(words::add);
        return words;
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
        repeatsFoot |= !feet.isEmpty() && times > 1;
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

    /** "R twice": the number stands behind its foot, and is not that of feet which are listed behind it. */
    boolean repeatsFoot() {
        return repeatsFoot;
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

    /** Words that are marked as not understood are no action, whatever stands beside them. */
    void unknown(Term term) {
        unknown.add(term);
        if (NotUnderstood.isWord(term.text())) {
            openTurn(term.column());
        }
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

    /** How it hangs on the clause before. */
    void joint(Joint before) {
        joint = before;
    }

    /** Whether it runs straight on from an action, which it may describe further. */
    boolean runsOn() {
        return joint == Joint.RUN_ON;
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
        boolean drawn = DRAWN.contains(verb) || told.contains(Told.BRINGS);
        return drawn && feet.contains(other.other()) && !feet.contains(other);
    }

    private static final Set<String> DRAWN = Set.of("drag", "slide", "touch", "tap", "close");

    boolean hasAction() {
        return row.isPresent() || !verb.isEmpty() || !part.isEmpty() || !places.isEmpty();
    }

    String part() {
        return part;
    }

    /** Where the same movement goes on to. */
    Direction swing() {
        return meanings().swing();
    }

    Set<String> places() {
        return places;
    }

    /** "Side, behind, side, cross (starting R)": the foot that begins the line. */
    void startsLine(Foot foot) {
        lineStart = Optional.of(foot);
    }

    Optional<Foot> lineStart() {
        return lineStart;
    }

    /** Feet that were told before; a figure may name its first one again. */
    void leads(List<Foot> before) {
        boolean listed = before.size() > 1 && isFigure();
        if (!hasFoot() || listed) {
            feet.addAll(0, before);
        }
    }

    Optional<FigureCall> figureCall() {
        return row.map(found -> meanings().figure(found));
    }

    /** The single action that these words mean; empty where they mean none. */
    Optional<ActionCall> action() {
        return openTurn.isPresent() ? Optional.empty() : meanings().action(hasAction());
    }

    private DraftMeaning meanings() {
        return new DraftMeaning(
                column, feet, ways, places, onto, towards, ownTurn(), turnSide, remarks, verb, part, paddles);
    }

    /** "Vine R (1/4 turn R)", "step R forward (1/4 turn L)": where feet are listed it may be the turn of all of them. */
    private Optional<TurnCall> ownTurn() {
        boolean one = isFigure() || (hasAction() && feet.size() < 2);
        return turn.or(() -> one ? turnInBrackets : Optional.empty());
    }

    /** What sort of clause the words make. */
    ClauseShape shape() {
        return new ClauseShape(
                feet,
                onto,
                isFigure(),
                verb,
                part,
                places,
                turn.isPresent(),
                openTurn.isPresent(),
                openNumber.isPresent(),
                !unknown.isEmpty(),
                told,
                remarks.weight());
    }

    Phrase phrase(Optional<ActionCall> action) {
        boolean eachNamed = feet.size() > 1 && feet.size() == repeats && row.isEmpty();
        int written = eachNamed ? 1 : repeats;
        int times = openNumber.isPresent() && action.isPresent() && feet.size() < 2 ? openNumber.getAsInt() : written;
        return new Phrase(
                column,
                figureCall(),
                action,
                Math.max(1, Math.min(times, 64)),
                duration,
                remarks,
                joint,
                unknown,
                mayBeTitle,
                shape().isAside());
    }
}
