package cuelead.cli;

import cuelead.report.Problem;
import java.util.List;

/** Findings for other programs: a line of column names, then a line a finding, each once. */
final class FindingsTsv {
    private static final List<String> COLUMNS = List.of("line", "kind", "text", "severity", "file", "column");

    private FindingsTsv() {}

    /** @param refusals what could not be looked at, a sentence each; they have no line */
    static String of(List<Problem> problems, List<String> refusals) {
        StringBuilder text = new StringBuilder(Tsv.line(COLUMNS));
        problems.stream().distinct().forEach(problem -> text.append(line(problem)));
        refusals.forEach(sentence ->
                text.append(Tsv.line(List.of("", "refused", sentence, Problem.Severity.ERROR.word(), "", ""))));
        return text.toString();
    }

    private static String line(Problem problem) {
        return Tsv.line(List.of(
                problem.line() > 0 ? String.valueOf(problem.line()) : "",
                problem.kind(),
                (problem.sentence() + " " + problem.tryThis()).strip(),
                problem.severity().word(),
                problem.file(),
                problem.column() > 0 ? String.valueOf(problem.column()) : ""));
    }
}
