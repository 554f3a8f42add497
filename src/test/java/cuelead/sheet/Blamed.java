package cuelead.sheet;

import cuelead.report.Problem;
import java.util.List;

/** What the author of a sheet is told to put right: all problems but notes, which blame nobody. */
final class Blamed {
    private Blamed() {}

    /** As sentences, in the order of the sheet. */
    static List<String> in(ReadSheet read) {
        return in(read.problems());
    }

    static List<String> in(List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .map(Problem::message)
                .toList();
    }
}
