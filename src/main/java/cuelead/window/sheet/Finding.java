package cuelead.window.sheet;

import cuelead.report.Problem;

/**
 * Something that was found in the sheet.
 *
 * @param line 1-based; 0 = it is about the whole sheet
 */
record Finding(Problem.Severity severity, int line, String words) {
    static Finding of(Problem problem) {
        return new Finding(
                problem.severity(),
                problem.line(),
                problem.sentence() + (problem.tryThis().isEmpty() ? "" : " " + problem.tryThis()));
    }

    /** The line to be looked at: the first, where it is about the whole. */
    int shownLine() {
        return Math.max(1, line);
    }
}
