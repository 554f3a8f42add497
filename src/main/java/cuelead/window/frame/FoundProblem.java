package cuelead.window.frame;

import cuelead.report.Problem;

/** What was found wrong, as it is read where the file is known. */
public final class FoundProblem {
    private FoundProblem() {}

    /** {@code Line 8: The heading names ... Correct it.} */
    public static String told(Problem problem) {
        return (problem.line() > 0 ? "Line " + problem.line() + ": " : "")
                + problem.sentence()
                + (problem.tryThis().isEmpty() ? "" : " " + problem.tryThis());
    }
}
