package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.ClockMark;
import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Direction;
import cuelead.dance.Facing;
import cuelead.dance.OwnCall;
import cuelead.dance.Step;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Reads one count line: its prose to steps on its counts, its quoted calls, its clock marks. */
final class LineReader {
    private final Problems problems;
    private final Footing footing;

    /** {@code footing} goes on from the line before, and on to the next. */
    LineReader(Problems problems, Footing footing) {
        this.problems = problems;
        this.footing = footing;
    }

    /**
     * What came of a line.
     *
     * @param steps      in order
     * @param calls      the sheet's own
     * @param marks      clock times with the count that they stand behind
     * @param restarts   counts behind which a restart is marked
     * @param understood whether any action was
     * @param doubtful   whether more or less may be danced than was read
     */
    record Result(
            List<Step> steps,
            List<OwnCall> calls,
            List<Phrase.Stated<MarkAt>> marks,
            List<Count> restarts,
            boolean understood,
            boolean doubtful) {}

    /** A facing behind a count. */
    record MarkAt(Count count, Facing facing) {}

    /** {@code written} are its counts, numbered within the section. */
    Result read(SheetLine line, CountGroup group, List<Count> written) {
        List<Token> tokens = Scanner.tokens(line.text(), group.end());
        List<Term> terms = Vocabulary.STANDARD.danced(Scanner.tokens(line.fit().danced(line.text()), group.end()));
        ProseParser parser = new ProseParser(Vocabulary.STANDARD, problems, line.number(), terms);
        List<Phrase> phrases = RepeatedLine.of(parser.phrases(), written);
        Optional<Fitting.Fit> fitting = Fitting.of(phrases, written);
        List<Count> counts = fitting.map(Fitting.Fit::counts).orElse(written);
        if (fitting.isPresent() && counts.size() > written.size()) {
            spread(line, group, written, counts);
        }
        MoveMaker maker = new MoveMaker(problems, line.number(), footing);
        List<Integer> sizes =
                fitting.map(Fitting.Fit::sizes).orElseGet(() -> misfit(line, group, phrases, written.size()));
        new LeftWords(Vocabulary.STANDARD, problems, line.number()).unread(phrases, sizes);
        Laid laid = lay(Joined.of(phrases, sizes), sizes, maker, counts);
        List<Step> steps = laid.steps(line.number());
        fill(steps, counts, line, group);
        if (fitting.isEmpty() || parser.isDoubtful()) {
            footing.doubt();
            steps.replaceAll(step -> step.with(Weight.UNKNOWN));
        }
        List<OwnCall> calls = new OwnCallReader(problems, line.number()).read(tokens, steps);
        boolean understood = phrases.stream().anyMatch(Phrase::readable);
        boolean misfit = fitting.isEmpty() && !onlyHoldsAreLeft(phrases, written.size());
        boolean unread = IntStream.range(0, phrases.size())
                .anyMatch(i -> sizes.get(i) > 0
                        && !phrases.get(i).readable()
                        && !phrases.get(i).mayBeLeft());
        boolean doubtful = misfit || unread || parser.isDoubtful() || maker.isDoubtful();
        return new Result(steps, calls, laid.marks(), laid.restarts(), understood, doubtful);
    }

    /** The moves of a line on its counts, with what is marked between them. */
    private record Laid(
            List<Count> counts,
            List<Move> moves,
            List<Phrase.Stated<MarkAt>> marks,
            List<Count> restarts,
            Turn surplus) {
        /** Turns beyond the counts are kept on the last one, so that the dancers face where the sheet says. */
        List<Step> steps(int line) {
            List<Step> steps = new ArrayList<>();
            for (Move move : moves) {
                boolean last = steps.size() == moves.size() - 1;
                steps.add(step(last ? move.turnedBy(surplus) : move, counts.get(steps.size()), line));
            }
            return steps;
        }
    }

    /** A turn without a count of its own is danced on the next one, and its facing is reached there. */
    private static Laid lay(List<Phrase> phrases, List<Integer> sizes, MoveMaker maker, List<Count> counts) {
        List<Move> moves = new ArrayList<>();
        List<Phrase.Stated<MarkAt>> marks = new ArrayList<>();
        List<Count> restarts = new ArrayList<>();
        Turn surplus = Turn.NONE;
        Deque<Turn> ofTitle = new ArrayDeque<>();
        for (int i = 0; i < phrases.size(); i++) {
            ofTitle.addAll(sizes.get(i) == 0 ? TitleTurns.of(phrases, i) : List.of());
            for (Move move : maker.moves(phrases.get(i), sizes.get(i))) {
                if (moves.size() < counts.size()) {
                    moves.add(ofTitle.isEmpty() ? move : move.turnedBy(ofTitle.remove()));
                } else {
                    surplus = surplus.plus(move.turn());
                }
            }
            boolean waits = sizes.get(i) == 0 && MoveMaker.isTurn(phrases.get(i)) && moves.size() < counts.size();
            Count behind = counts.get(Math.max(0, waits ? moves.size() : moves.size() - 1));
            Phrase.Remarks remarks = phrases.get(i).remarks();
            remarks.clock()
                    .ifPresent(
                            clock -> marks.add(new Phrase.Stated<>(new MarkAt(behind, clock.value()), clock.column())));
            if (remarks.restart()) {
                restarts.add(behind);
            }
        }
        return new Laid(counts, moves, marks, restarts, surplus.plus(maker.takeWaitingTurn()));
    }

    /** Reports a line whose actions do not fill its counts; each takes what it usually does. */
    private List<Integer> misfit(SheetLine line, CountGroup group, List<Phrase> phrases, int counts) {
        new Misfit(problems, line, group).report(phrases, counts);
        return phrases.stream().map(Fitting::usual).toList();
    }

    static Step step(Move move, Count count, int line) {
        return new Step(
                count,
                move.foot(),
                move.action(),
                move.direction(),
                move.turn(),
                move.transfer(),
                move.weightAfter(),
                line,
                move.column());
    }

    /** What is too much moves and turns nobody. */
    private static boolean onlyHoldsAreLeft(List<Phrase> phrases, int counts) {
        int used = 0;
        for (Phrase phrase : phrases) {
            boolean holds = phrase.action()
                    .filter(call -> call.action() == Action.HOLD || call.action() == Action.CLAP)
                    .isPresent();
            if (used + Fitting.usual(phrase) > counts && !holds) {
                return false;
            }
            used += Fitting.usual(phrase);
        }
        return used > counts;
    }

    /** "3-4 Shuffle forward": three steps are meant to be 3&4. */
    private void spread(SheetLine line, CountGroup group, List<Count> written, List<Count> counts) {
        String labels = counts.stream()
                .map(count -> count.isWhole()
                        ? String.valueOf(count.number())
                        : count.split().mark())
                .collect(Collectors.joining(" "));
        problems.note(
                "counts_spread",
                line.number(),
                group.column(),
                "\"" + group.written(line.text()) + "\" has " + written.size() + " counts for " + counts.size()
                        + " actions, so they are read on " + labels + ".",
                "Write the counts between the beats, such as \"3&4\".");
    }

    /** A hold on every count that is left over, so that the dance keeps its length; the mistake is reported. */
    private void fill(List<Step> steps, List<Count> counts, SheetLine line, CountGroup group) {
        while (steps.size() < counts.size()) {
            steps.add(new Step(
                    counts.get(steps.size()),
                    Optional.empty(),
                    Action.HOLD,
                    Direction.NONE,
                    Turn.NONE,
                    Transfer.NONE,
                    footing.weight(),
                    line.number(),
                    group.column()));
        }
    }

    /** The mark as the checker needs it, after {@code countsBefore} of the part. */
    static ClockMark clockMark(String part, int countsBefore, Phrase.Stated<MarkAt> mark, int line) {
        Counts after =
                Counts.of(countsBefore).plus(mark.value().count().offset()).plus(new Counts(1));
        return new ClockMark(part, after, mark.value().facing(), line, mark.column());
    }
}
