package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import cuelead.sheet.Footing.Naming;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns the phrases of a line into moves: a foot that is not named is the free one (a step moves the weight, so the
 * other foot comes next).
 */
final class MoveMaker {
    private static final int EIGHTH_DEGREES = 45;
    /** To either side it faces the same wall. */
    private static final int HALF_DEGREES = 180;

    private final Problems problems;
    private final int line;
    private final Footing footing;
    private Turn waiting = Turn.NONE;
    private boolean doubtful;

    /** {@code footing} goes on from the line before, and on to the next. */
    MoveMaker(Problems problems, int line, Footing footing) {
        this.problems = problems;
        this.line = line;
        this.footing = footing;
    }

    /** Whether the moves may turn otherwise than the sheet means. */
    boolean isDoubtful() {
        return doubtful;
    }

    /** A turn that stood alone and found no action to go with. */
    Turn takeWaitingTurn() {
        Turn turn = waiting;
        waiting = Turn.NONE;
        return turn;
    }

    /** As many moves as the phrase has counts. */
    List<Move> moves(Phrase phrase, int size) {
        if (size == 0 && !isTurn(phrase)) {
            return List.of();
        }
        List<Move> moves;
        if (!phrase.readable()) {
            footing.lose();
            doubtful = true;
            moves = holds(phrase.column(), size);
        } else if (usesFigure(phrase, size)) {
            moves = figure(phrase, phrase.figure().orElseThrow(), size);
        } else {
            moves = action(phrase, phrase.action().orElseThrow(), size);
        }
        return new WeightNote(problems, line, footing).weighted(phrase, moves);
    }

    /** Whether it only turns, so that it may wait for the next step. */
    static boolean isTurn(Phrase phrase) {
        return phrase.figure().isEmpty()
                && phrase.action().filter(Phrase.ActionCall::isBareTurn).isPresent();
    }

    private List<Move> holds(int column, int size) {
        List<Move> moves = new ArrayList<>();
        while (moves.size() < size) {
            moves.add(took(Move.hold(column), Naming.IMPLIED));
        }
        return moves;
    }

    private static boolean usesFigure(Phrase phrase, int size) {
        if (phrase.figure().isEmpty()) {
            return false;
        }
        int usual = Fitting.usual(phrase);
        return phrase.action().isEmpty() || size == usual || (size == usual - 1 && size != phrase.repeats());
    }

    private List<Move> figure(Phrase phrase, Phrase.FigureCall named, int size) {
        Phrase.FigureCall call = named.quick()
                .filter(quick -> size == quick.row().figure().pattern().size() * phrase.repeats())
                .orElse(named);
        List<Move> moves = new ArrayList<>();
        Naming naming = call.feet().isEmpty() ? Naming.IMPLIED : Naming.NAMED;
        for (int from = 0; moves.size() < size; from += call.feetEach()) {
            Optional<Foot> foot = call.feet().stream().skip(from).findFirst();
            Figure danced = new FigureTurns(problems, line).danced(call, lead(phrase, call, foot));
            boolean isListed = listsSteps(call, danced, from);
            if (size <= danced.pattern().size()) {
                tellShortList(call, danced, phrase);
            }
            int listed = from;
            for (Figure.Beat beat : danced.pattern()) {
                Move move = move(beat, phrase.column());
                if (beat.foot().isPresent() && isListed) {
                    move = asListed(move, call, listed);
                    listed++;
                }
                if (moves.size() < size) {
                    moves.add(took(move, naming));
                }
            }
        }
        return moves;
    }

    /** "Shuffle forward R, L": a foot is missing from the list. */
    private void tellShortList(Phrase.FigureCall call, Figure danced, Phrase phrase) {
        List<Foot> listed = call.feet();
        boolean alternate = listed.size() > 1 && listed.get(0) != listed.get(1);
        boolean stepped =
                danced.pattern().stream().allMatch(beat -> beat.transfer().takesWeight());
        if (alternate
                && stepped
                && call.turn().isEmpty()
                && phrase.repeats() == 1
                && listed.size() + 1 == danced.pattern().size()) {
            problems.error(
                    "incomplete_figure",
                    line,
                    phrase.column(),
                    danced.name() + " has " + danced.pattern().size() + " steps, but " + listed.size()
                            + " feet are listed.",
                    "List a foot for every step, such as \"R, L, R\".");
        }
    }

    private static Move move(Figure.Beat beat, int column) {
        return new Move(beat.foot(), beat.action(), beat.direction(), beat.turn(), beat.transfer(), column);
    }

    /** "Rocking chair (R back, L, R forward, L)": the listed foot, and its way where the table's is another one. */
    private static Move asListed(Move move, Phrase.FigureCall call, int index) {
        boolean goes = move.action() == Action.ROCK || move.action() == Action.STEP;
        boolean told = index < call.ways().size() && call.ways().get(index) != Direction.NONE;
        return new Move(
                Optional.of(call.feet().get(index)),
                move.action(),
                goes && told ? call.ways().get(index) : move.direction(),
                move.turn(),
                move.transfer(),
                move.column());
    }

    /** "R, L, R": the prose wins over the table where it names every foot. */
    private static boolean listsSteps(Phrase.FigureCall call, Figure danced, int from) {
        long footed = danced.pattern().stream()
                .filter(beat -> beat.foot().isPresent())
                .count();
        return footed > 1
                && call.feetEach() == footed
                && from + footed <= call.feet().size();
    }

    private Foot lead(Phrase phrase, Phrase.FigureCall call, Optional<Foot> named) {
        if (named.isPresent()) {
            boolean byTravel =
                    call.row().travelsAgainstItsLead() && footing.standing().equals(named);
            return byTravel ? named.get().other() : named.get();
        }
        Figure figure = call.row().figure();
        boolean needsFoot = figure.pattern().get(0).foot().isPresent();
        if (needsFoot && footing.free().isEmpty()) {
            whichFoot(phrase.column());
        }
        doubtful |= footing.isDoubted() && call.turn().isPresent();
        return footing.free().orElse(figure.lead());
    }

    private List<Move> action(Phrase phrase, Phrase.ActionCall call, int size) {
        if (call.isWalkAround()) {
            return walkAround(phrase, call, size);
        }
        List<Move> moves = new ArrayList<>();
        if (size == 0) {
            call.turn()
                    .filter(turn -> !phrase.mayBeTitle())
                    .ifPresent(turn -> waiting = waiting.plus(turned(turn, call)));
            return moves;
        }
        for (int i = 0; i < size; i++) {
            boolean again = i < phrase.repeats();
            Move move = again ? single(phrase, call, i) : continued(call, moves.get(0));
            moves.add(took(move, again && call.foot().isPresent() ? Naming.NAMED : Naming.IMPLIED));
        }
        return moves;
    }

    private Move single(Phrase phrase, Phrase.ActionCall call, int index) {
        Turn turn = index == 0 ? call.turn().map(found -> turned(found, call)).orElse(Turn.NONE) : Turn.NONE;
        if (call.isBareTurn()) {
            return turnedOnTheSpot(phrase, call, turn);
        }
        Optional<Foot> foot = call.foot();
        if (foot.isEmpty() && !ActionRules.needsNoFoot(call.action())) {
            foot = footing.free();
            if (foot.isEmpty()) {
                whichFoot(phrase.column());
            }
        }
        Optional<Move> home = new FootOut(footing).comesBack(call, foot, turn, phrase.column());
        if (home.isPresent()) {
            return home.get();
        }
        Direction direction = foot.flatMap(side -> DraftMeaning.lateral(call.action(), side))
                .filter(side -> call.direction() == Direction.NONE)
                .orElse(call.direction());
        return new Move(foot, call.action(), direction, turn, call.transfer(), phrase.column());
    }

    /**
     * A turn with a count of its own: behind a step forward, or where the weight is said to be on the other foot then, it
     * is a pivot onto that foot, else a spin. A paddle turn comes back onto the other foot behind any step.
     */
    private Move turnedOnTheSpot(Phrase phrase, Phrase.ActionCall call, Turn turn) {
        Optional<Foot> stated =
                phrase.remarks().weight().filter(foot -> footing.free().equals(Optional.of(foot)));
        boolean pivots = pivots(call) || stated.isPresent();
        return new Move(
                pivots ? call.foot().or(footing::free) : Optional.empty(),
                pivots ? Action.PIVOT : Action.SPIN,
                pivots ? Direction.PLACE : Direction.NONE,
                turn,
                pivots ? Transfer.FULL : Transfer.NONE,
                phrase.column());
    }

    /** One walk a count, foot after foot; the turn is spread over them as evenly as eighths of a turn allow. */
    private List<Move> walkAround(Phrase phrase, Phrase.ActionCall call, int size) {
        int degrees = call.turn().map(turn -> turned(turn, call).degrees()).orElse(0);
        int eighths = Math.abs(degrees) / EIGHTH_DEGREES;
        Naming naming = call.foot().isPresent() ? Naming.NAMED : Naming.IMPLIED;
        Optional<Foot> foot = call.foot().or(footing::free);
        if (foot.isEmpty()) {
            whichFoot(phrase.column());
        }
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int share = (i + 1) * eighths / size - i * eighths / size;
            Turn turn = new Turn(share * EIGHTH_DEGREES * Integer.signum(degrees));
            moves.add(took(new Move(foot, Action.WALK, Direction.FWD, turn, Transfer.FULL, phrase.column()), naming));
            foot = foot.map(Foot::other);
        }
        return moves;
    }

    private boolean pivots(Phrase.ActionCall call) {
        return footing.last()
                .filter(move -> call.isPaddle()
                        ? move.takesWeight()
                        : move.action() == Action.STEP
                                && (move.direction() == Direction.FWD || move.direction() == Direction.PLACE))
                .isPresent();
    }

    /** What a long action does on its further counts: a drag goes on, a sway is held. */
    private static Move continued(Phrase.ActionCall call, Move first) {
        boolean held = call.transfer() != Transfer.NONE || call.action() == Action.HOLD || call.action() == Action.CLAP;
        return held
                ? Move.hold(first.column())
                : new Move(first.foot(), first.action(), Direction.CONT, Turn.NONE, Transfer.NONE, first.column());
    }

    /** Which way a turn goes: as written; a pivot, and a half turn behind a step forward, turns away from the foot in front, a paddle from the foot that pushes. */
    private Turn turned(Phrase.TurnCall turn, Phrase.ActionCall call) {
        if (turn.side().isPresent()) {
            return turn.to(turn.side().get());
        }
        Optional<Foot> standing = footing.standing();
        if (call.action() == Action.PIVOT && standing.isPresent()) {
            doubtful |= footing.isDoubted();
            boolean pushed =
                    call.isPaddle() && footing.last().filter(Move::takesWeight).isEmpty();
            return turn.to(pushed ? standing.get() : standing.get().other());
        }
        boolean half = turn.degrees() == HALF_DEGREES;
        if (half && call.isBareTurn() && standing.isPresent() && pivots(call)) {
            doubtful |= footing.isDoubted();
            return turn.to(standing.get().other());
        }
        doubtful = true;
        problems.unread(Problems.Span.of(line, Problems.Extent.LINE));
        problems.error(
                "turn_side", line, turn.column(), "This turn does not say to which side.", "Add R or L behind it.");
        return Turn.NONE;
    }

    /** Where the weight is not known because something was not understood, that is told already. */
    private void whichFoot(int column) {
        boolean told = footing.isDoubted();
        footing.doubt();
        if (told) {
            return;
        }
        problems.error(
                "which_foot",
                line,
                column,
                "It is not clear which foot does this: none is named, and the weight is not on one foot before it.",
                "Name the foot, or write \"(weight on L)\" behind the action before.");
    }

    private Move took(Move move, Naming naming) {
        Move turned = move.turnedBy(waiting);
        waiting = Turn.NONE;
        return footing.take(turned, naming);
    }
}
