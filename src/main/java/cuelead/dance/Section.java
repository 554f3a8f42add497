package cuelead.dance;

import java.util.List;

/**
 * An eight (six in waltz), or a shorter piece of a tag.
 *
 * @param name     as the sheet numbers it: {@code S1}, {@code A1}, {@code TAG}
 * @param heading  the sheet's heading for it, may be empty
 * @param length   in counts
 * @param steps    in order of their counts
 * @param figures  recognised in the steps, in order, not overlapping; steps between them stand alone
 * @param ownCalls the sheet's own calls
 * @param line     1-based line of its heading; 0 when made without a sheet
 */
public record Section(
        String name,
        String heading,
        int length,
        List<Step> steps,
        List<FigureRun> figures,
        List<OwnCall> ownCalls,
        int line) {
    public Section {
        steps = List.copyOf(steps);
        figures = List.copyOf(figures);
        ownCalls = List.copyOf(ownCalls);
    }

    /** The same with other steps. */
    public Section with(List<Step> otherSteps) {
        return new Section(name, heading, length, otherSteps, figures, ownCalls, line);
    }

    /** The sum of its turns. */
    public Turn netTurn() {
        return steps.stream().map(Step::turn).reduce(Turn.NONE, Turn::plus);
    }
}
