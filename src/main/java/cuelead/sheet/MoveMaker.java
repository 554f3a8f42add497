package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.Figures;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns phrases into moves, keeping account of the weight: a foot that is not named is the free one (a step moves
 * the weight, so the other foot comes next).
 */
final class MoveMaker {
    private final Problems problems;
    private Weight weight;
    private Turn waiting = Turn.NONE;
    private Optional<Move> last = Optional.empty();
    private int whichFootColumn;

    MoveMaker(Problems problems, Weight weight) {
        this.problems = problems;
        this.weight = weight;
    }

    /** An action without a count yet. */
    record Move(
            Optional<Foot> foot,
            Action action,
            Direction direction,
            Turn turn,
            Transfer transfer,
            Weight weightAfter,
            int column) {
        Move turnedBy(Turn more) {
            return new Move(foot, action, direction, turn.plus(more), transfer, weightAfter, column);
        }
    }

    Weight weight() {
        return weight;
    }

    /** A turn that stood alone and found no action to go with. */
    Turn takeWaitingTurn() {
        Turn turn = waiting;
        waiting = Turn.NONE;
        return turn;
    }

    /** As many moves as the phrase has counts. */
    List<Move> moves(Phrase phrase, int size, int line) {
        List<Move> moves;
        if (!phrase.readable()) {
            weight = Weight.UNKNOWN;
            moves = repeat(hold(phrase.column()), size);
        } else if (usesFigure(phrase, size)) {
            moves = figure(phrase, phrase.figure().orElseThrow(), size, line);
        } else {
            moves = action(phrase, phrase.action().orElseThrow(), size, line);
        }
        return weighted(phrase, moves, line);
    }

    private static boolean usesFigure(Phrase phrase, int size) {
        if (phrase.figure().isEmpty()) {
            return false;
        }
        int usual = Fitting.usual(phrase);
        return phrase.action().isEmpty() || size == usual || (size == usual - 1 && size != phrase.repeats());
    }

    private List<Move> figure(Phrase phrase, Phrase.FigureCall call, int size, int line) {
        List<Move> moves = new ArrayList<>();
        Optional<Foot> named = call.feet().stream().findFirst();
        while (moves.size() < size) {
            Foot lead = lead(phrase, call, named, line);
            Figure danced = new FigureTurns(problems, line).danced(call, lead);
            List<Foot> feet = listedFeet(call, danced);
            int listed = 0;
            for (Figure.Beat beat : danced.pattern()) {
                Optional<Foot> foot = beat.foot();
                if (foot.isPresent() && !feet.isEmpty()) {
                    foot = Optional.of(feet.get(listed));
                    listed++;
                }
                if (moves.size() < size) {
                    moves.add(took(new Move(
                            foot,
                            beat.action(),
                            beat.direction(),
                            beat.turn(),
                            beat.transfer(),
                            Weight.UNKNOWN,
                            phrase.column())));
                }
            }
            named = Optional.empty();
        }
        return moves;
    }

    /** "R, L, R": the prose wins over the table where it names every foot. */
    private static List<Foot> listedFeet(Phrase.FigureCall call, Figure danced) {
        long footed = danced.pattern().stream()
                .filter(beat -> beat.foot().isPresent())
                .count();
        return call.feet().size() == footed && footed > 1 ? call.feet() : List.of();
    }

    private Foot lead(Phrase phrase, Phrase.FigureCall call, Optional<Foot> named, int line) {
        if (named.isPresent()) {
            boolean byTravel = call.row().travelsAgainstItsLead() && weight.isOn(named.get());
            return byTravel ? named.get().other() : named.get();
        }
        Figure figure = call.row().figure();
        boolean noFoot = figure.pattern().get(0).foot().isEmpty();
        return free().orElseGet(() -> {
            if (!noFoot) {
                whichFoot(line, phrase.column());
            }
            return figure.lead();
        });
    }

    private List<Move> action(Phrase phrase, Phrase.ActionCall call, int size, int line) {
        List<Move> moves = new ArrayList<>();
        if (size == 0) {
            call.turn().ifPresent(turn -> waiting = waiting.plus(turned(turn, call, line)));
            return moves;
        }
        for (int i = 0; i < size; i++) {
            boolean again = i < phrase.repeats();
            moves.add(took(again ? single(phrase, call, i, line) : continued(call, moves.get(0))));
        }
        return moves;
    }

    private Move single(Phrase phrase, Phrase.ActionCall call, int index, int line) {
        Turn turn =
                index == 0 ? call.turn().map(found -> turned(found, call, line)).orElse(Turn.NONE) : Turn.NONE;
        if (call.isBareTurn()) {
            return turnedOnTheSpot(phrase, call, turn);
        }
        Optional<Foot> foot = call.foot();
        if (foot.isEmpty() && !ActionRules.needsNoFoot(call.action())) {
            foot = free();
            if (foot.isEmpty()) {
                whichFoot(line, phrase.column());
            }
        }
        Direction direction = foot.flatMap(side -> PhraseDraft.lateral(call.action(), side))
                .filter(side -> call.direction() == Direction.NONE)
                .orElse(call.direction());
        return new Move(foot, call.action(), direction, turn, call.transfer(), Weight.UNKNOWN, phrase.column());
    }

    /** A turn with a count of its own: behind a step forward it is a pivot onto the other foot, else a spin. */
    private Move turnedOnTheSpot(Phrase phrase, Phrase.ActionCall call, Turn turn) {
        boolean pivots = last.filter(move -> move.action() == Action.STEP && move.direction() == Direction.FWD)
                .isPresent();
        Optional<Foot> foot = pivots ? call.foot().or(this::free) : Optional.empty();
        return new Move(
                foot,
                pivots ? Action.PIVOT : Action.SPIN,
                pivots ? Direction.PLACE : Direction.NONE,
                turn,
                pivots ? Transfer.FULL : Transfer.NONE,
                Weight.UNKNOWN,
                phrase.column());
    }

    /** What a long action does on its further counts: a drag goes on, a sway is held. */
    private static Move continued(Phrase.ActionCall call, Move first) {
        boolean held = call.transfer() != Transfer.NONE || call.action() == Action.HOLD || call.action() == Action.CLAP;
        if (held) {
            return hold(first.column());
        }
        return new Move(
                first.foot(), first.action(), Direction.CONT, Turn.NONE, Transfer.NONE, Weight.UNKNOWN, first.column());
    }

    private static Move hold(int column) {
        return new Move(
                Optional.empty(), Action.HOLD, Direction.NONE, Turn.NONE, Transfer.NONE, Weight.UNKNOWN, column);
    }

    private List<Move> repeat(Move move, int size) {
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            moves.add(took(move));
        }
        return moves;
    }

    /** Which way a turn goes: as written; a pivot turns away from the foot in front. */
    private Turn turned(Phrase.TurnCall turn, Phrase.ActionCall call, int line) {
        if (turn.side().isPresent()) {
            return turn.to(turn.side().get());
        }
        Optional<Foot> front = weight == Weight.LEFT
                ? Optional.of(Foot.LEFT)
                : weight == Weight.RIGHT ? Optional.of(Foot.RIGHT) : Optional.empty();
        if (call.action() == Action.PIVOT && front.isPresent()) {
            return turn.to(front.get().other());
        }
        problems.error(
                "turn_side", line, turn.column(), "This turn does not say to which side.", "Add R or L behind it.");
        return Turn.NONE;
    }

    private Optional<Foot> free() {
        return switch (weight) {
            case LEFT -> Optional.of(Foot.RIGHT);
            case RIGHT -> Optional.of(Foot.LEFT);
            case BOTH, UNKNOWN -> Optional.empty();
        };
    }

    /** Where the weight is not known because an action was not understood, that is told already. */
    private void whichFoot(int line, int column) {
        if (whichFootColumn == column || (weight == Weight.UNKNOWN && problems.has("unknown_words"))) {
            return;
        }
        whichFootColumn = column;
        problems.error(
                "which_foot",
                line,
                column,
                "It is not clear which foot does this: none is named, and the weight is not on one foot before it.",
                "Name the foot, or write \"(weight on L)\" behind the action before.");
    }

    private Move took(Move move) {
        Move turned = move.turnedBy(waiting);
        waiting = Turn.NONE;
        weight = after(turned);
        Move done = new Move(
                turned.foot(),
                turned.action(),
                turned.direction(),
                turned.turn(),
                turned.transfer(),
                weight,
                turned.column());
        last = Optional.of(done);
        return done;
    }

    private Weight after(Move move) {
        if (move.transfer() == Transfer.SPLIT) {
            return Weight.BOTH;
        }
        return move.foot().isPresent() && move.transfer().takesWeight()
                ? Weight.on(move.foot().get())
                : weight;
    }

    /** A weight note ("weight on L", "no weight") has the last word about the last action of its phrase. */
    private List<Move> weighted(Phrase phrase, List<Move> moves, int line) {
        Optional<Foot> note = phrase.remarks().weight();
        if (note.isEmpty() || moves.isEmpty()) {
            return moves;
        }
        Move move = moves.get(moves.size() - 1);
        Weight stated = Weight.on(note.get());
        Transfer transfer = move.transfer();
        if (move.foot().equals(note)) {
            transfer = Transfer.FULL;
        } else if (move.foot().isPresent() && move.transfer().takesWeight()) {
            transfer = Transfer.NONE;
        } else if (weight == Weight.on(note.get().other())) {
            problems.error(
                    "weight_note",
                    line,
                    move.column(),
                    "The sheet says weight on " + note.get().word() + ", but by its steps the weight is on "
                            + note.get().other().word() + " here.",
                    "Check which foot stepped last before it.");
        }
        Move noted =
                new Move(move.foot(), move.action(), move.direction(), move.turn(), transfer, stated, move.column());
        weight = stated;
        last = Optional.of(noted);
        List<Move> changed = new ArrayList<>(moves);
        changed.set(moves.size() - 1, noted);
        return changed;
    }

    /** Adds the turn that a figure is called with. */
    private record FigureTurns(Problems problems, int line) {
        Figure danced(Phrase.FigureCall call, Foot lead) {
            Figure base = call.row().figure();
            Figure sided = lead == base.lead() ? base : base.mirrored();
            if (call.turn().isEmpty()) {
                return sided;
            }
            Phrase.TurnCall turn = call.turn().get();
            int net = net(sided);
            if (net == 0) {
                return turning(call, sided, turn, lead);
            }
            Turn wanted = turn.side().map(turn::to).orElse(new Turn(net));
            return wanted.degrees() == -net ? withTurns(sided, -1) : sided;
        }

        /** A figure that is called with a turn which its row lacks: its turning sister in the table, if there is one. */
        private Figure turning(Phrase.FigureCall call, Figure sided, Phrase.TurnCall turn, Foot lead) {
            Optional<Figure> sister = Figures.standard().rows().stream()
                    .filter(row -> row.figure().id().startsWith(sided.id() + "_"))
                    .filter(row -> Math.abs(row.netTurn().degrees()) == turn.degrees())
                    .map(row -> lead == row.figure().lead()
                            ? row.figure()
                            : row.figure().mirrored())
                    .findFirst();
            if (sister.isPresent()) {
                boolean otherWay = turn.side()
                        .map(turn::to)
                        .filter(wanted -> wanted.degrees() == -net(sister.get()))
                        .isPresent();
                return otherWay ? withTurns(sister.get(), -1) : sister.get();
            }
            Foot side = turn.side().orElse(lead);
            problems.warning(
                    "turn_placed",
                    line,
                    turn.column(),
                    "It is not said on which count this " + call.row().figure().name()
                            + " turns; the turn is read on its first.",
                    "Write its steps out to say where it turns.");
            return firstTurned(sided, turn.to(side));
        }

        private static int net(Figure figure) {
            return figure.pattern().stream()
                    .mapToInt(beat -> beat.turn().degrees())
                    .sum();
        }

        private static Figure withTurns(Figure figure, int sign) {
            return withPattern(
                    figure,
                    figure.pattern().stream()
                            .map(beat -> turned(beat, new Turn(beat.turn().degrees() * sign)))
                            .toList());
        }

        private static Figure firstTurned(Figure figure, Turn turn) {
            List<Figure.Beat> pattern = new ArrayList<>(figure.pattern());
            pattern.set(0, turned(pattern.get(0), turn));
            return withPattern(figure, pattern);
        }

        private static Figure.Beat turned(Figure.Beat beat, Turn turn) {
            return new Figure.Beat(beat.offset(), beat.foot(), beat.action(), beat.direction(), turn, beat.transfer());
        }

        private static Figure withPattern(Figure figure, List<Figure.Beat> pattern) {
            return new Figure(
                    figure.id(),
                    figure.name(),
                    figure.synonyms(),
                    figure.lead(),
                    pattern,
                    figure.callHead(),
                    figure.callWords());
        }
    }
}
