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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one count line: its prose to steps on its counts, its quoted calls, its clock marks. */
final class LineReader {
    private final Problems problems;
    private Weight weight;

    LineReader(Problems problems, Weight weight) {
        this.problems = problems;
        this.weight = weight;
    }

    /**
     * What came of a line.
     *
     * @param steps      in order
     * @param calls      the sheet's own
     * @param marks      clock times with the count that they stand behind
     * @param restarts   counts behind which a restart is marked
     * @param understood whether any action was
     */
    record Result(
            List<Step> steps,
            List<OwnCall> calls,
            List<Phrase.Stated<MarkAt>> marks,
            List<Count> restarts,
            boolean understood) {}

    /** A facing behind a count. */
    record MarkAt(Count count, Facing facing) {}

    Weight weight() {
        return weight;
    }

    /** {@code counts} are numbered within the section; {@code written} is how the sheet shows them. */
    Result read(SheetLine line, CountGroup group, List<Count> counts) {
        List<Token> tokens = Scanner.tokens(line.text(), group.end());
        List<Term> terms = Vocabulary.STANDARD.terms(tokens);
        List<Phrase> phrases = new ProseParser(Vocabulary.STANDARD, problems, line.number(), terms).phrases();
        int[] sizes = sizes(line, group, phrases, counts.size());
        MoveMaker maker = new MoveMaker(problems, weight);
        List<Step> steps = new ArrayList<>();
        List<Phrase.Stated<MarkAt>> marks = new ArrayList<>();
        List<Count> restarts = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            for (MoveMaker.Move move : maker.moves(phrases.get(i), sizes[i], line.number())) {
                if (steps.size() < counts.size()) {
                    steps.add(step(move, counts.get(steps.size()), line.number()));
                }
            }
            Count behind = steps.isEmpty() ? counts.get(0) : counts.get(steps.size() - 1);
            phrases.get(i)
                    .remarks()
                    .clock()
                    .ifPresent(
                            clock -> marks.add(new Phrase.Stated<>(new MarkAt(behind, clock.value()), clock.column())));
            if (phrases.get(i).remarks().restart()) {
                restarts.add(behind);
            }
        }
        weight = maker.weight();
        turnLast(steps, maker.takeWaitingTurn());
        fill(steps, counts, line, group);
        List<OwnCall> calls = new OwnCallReader(problems, line.number()).read(tokens, steps);
        boolean understood = phrases.stream().anyMatch(Phrase::readable);
        return new Result(steps, calls, marks, restarts, understood);
    }

    private int[] sizes(SheetLine line, CountGroup group, List<Phrase> phrases, int counts) {
        if (phrases.isEmpty()) {
            problems.error(
                    "no_action",
                    line.number(),
                    group.column(),
                    "Nothing is danced on " + group.written(line.text()) + ".",
                    "Write an action behind the counts, if only \"hold\".");
            return new int[0];
        }
        Optional<int[]> fitting = Fitting.sizes(phrases, counts);
        if (fitting.isPresent()) {
            return fitting.get();
        }
        int[] usual = phrases.stream().mapToInt(Fitting::usual).toArray();
        int total = 0;
        for (int size : usual) {
            total += size;
        }
        problems.error(
                "actions_and_counts",
                line.number(),
                group.column(),
                "\"" + group.written(line.text()) + "\" counts " + number(counts, "action") + ", but "
                        + number(total, "action") + (total == 1 ? " is" : " are") + " written.",
                total > counts
                        ? "Add the counts that are missing (three steps in two counts are 1&2), or a line."
                        : "Write what is danced on every count, if only \"hold\".");
        return usual;
    }

    private static String number(int value, String unit) {
        return value + " " + unit + (value == 1 ? "" : "s");
    }

    private static Step step(MoveMaker.Move move, Count count, int line) {
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

    private static void turnLast(List<Step> steps, Turn turn) {
        if (!turn.isNone() && !steps.isEmpty()) {
            Step last = steps.remove(steps.size() - 1);
            steps.add(new Step(
                    last.count(),
                    last.foot(),
                    last.action(),
                    last.direction(),
                    last.turn().plus(turn),
                    last.transfer(),
                    last.weightAfter(),
                    last.line(),
                    last.column()));
        }
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
                    weight,
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
