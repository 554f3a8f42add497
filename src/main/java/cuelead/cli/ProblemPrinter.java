package cuelead.cli;

import cuelead.document.DocumentText;
import cuelead.report.Problem;
import cuelead.steer.Told;
import java.io.PrintStream;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells problems: in full with the line and a caret, or in short. Tells none twice. */
final class ProblemPrinter {
    private static final String INDENT = "    ";
    private static final int WIDEST = 100;
    private static final String CUT = "...";
    private static final int MOST_IN_SHORT = 5;

    private final PrintStream to;
    private final SourceLines sources;
    private final Set<Problem> told = new HashSet<>();

    ProblemPrinter(PrintStream to) {
        this(to, Map.of());
    }

    /** @param open documents that are open already, by the names that problems have for them */
    ProblemPrinter(PrintStream to, Map<String, DocumentText> open) {
        this.to = to;
        sources = new SourceLines(open);
    }

    /** Every problem with its line and a caret under its column; then how lines are counted, where that is a question. */
    void tellInFull(List<Problem> problems) {
        for (Problem problem : problems) {
            if (told.add(problem)) {
                to.println(problem.message());
                line(problem).ifPresent(line -> to.println(excerpt(line, problem.column())));
            }
        }
        problems.stream()
                .filter(problem -> problem.line() > 0)
                .map(Problem::file)
                .distinct()
                .flatMap(file -> sources.explanation(file).stream())
                .forEach(to::println);
    }

    /** The first few that matter, a line each, and how many more there are. */
    void tellInShort(List<Problem> problems) {
        List<Problem> fresh = problems.stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .filter(told::add)
                .toList();
        fresh.stream().limit(MOST_IN_SHORT).forEach(problem -> to.println(problem.message()));
        if (fresh.size() > MOST_IN_SHORT) {
            to.println(Told.number(fresh.size() - MOST_IN_SHORT, "more problem") + ": cuelead check lists them all.");
        }
    }

    /** Notes that matter here, a line each. */
    void tellNotes(List<Problem> notes) {
        notes.stream().filter(told::add).forEach(note -> to.println(note.message()));
    }

    private Optional<String> line(Problem problem) {
        return problem.line() > 0 ? sources.line(problem.file(), problem.line()) : Optional.empty();
    }

    /**
     * A line with a caret under one of its characters; a long line is cut around it.
     *
     * @param column 1-based; 0 for no caret
     */
    static String excerpt(String line, int column) {
        int at = Math.max(0, Math.min(column - 1, line.length()));
        int from = at > WIDEST * 3 / 4 ? at - WIDEST / 2 : 0;
        int to = Math.min(line.length(), from + WIDEST);
        String before = from > 0 ? CUT : "";
        String shown = INDENT + before + line.substring(from, to) + (to < line.length() ? CUT : "");
        if (column < 1) {
            return shown;
        }
        // a tab stays a tab, so that the caret stands right whatever its width
        String space = line.substring(from, at).replaceAll("[^\t]", " ");
        return shown + System.lineSeparator() + INDENT + " ".repeat(before.length()) + space + "^";
    }
}
