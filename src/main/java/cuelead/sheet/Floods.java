package cuelead.sheet;

import cuelead.english.Enumeration;
import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Many lines with the same fault: an author makes a mistake here and there, so the sheet is then written in a way that is
 * not read yet. That is told once, with all the lines, and what follows are notes.
 */
final class Floods {
    /** Lines of one kind that may well be mistakes. */
    private static final int MOST_OF_A_KIND = 3;
    /** Lines of all these kinds together. */
    private static final int MOST = 6;

    /** What comes of lines that are not read rightly. */
    private static final Set<String> KINDS = Set.of(
            "unread", "no_action", "incomplete_figure", "missing_counts", "extra_count", "count_order", "which_foot");

    private Floods() {}

    /** The same problems in the same order. */
    static List<Problem> eased(List<Problem> problems) {
        List<Problem> flood = problems.stream()
                .filter(problem -> KINDS.contains(problem.kind()) && problem.severity() != Severity.NOTE)
                .toList();
        boolean all = lines(flood) > MOST;
        List<Problem> told = flood.stream()
                .filter(problem -> all || lines(ofKind(flood, problem.kind())) > MOST_OF_A_KIND)
                .toList();
        Optional<Problem> worst = told.stream().min(Comparator.comparing(Problem::severity));
        List<Problem> eased = new ArrayList<>();
        for (Problem problem : problems) {
            boolean speaks = worst.filter(problem::equals).isPresent();
            eased.add(speaks ? once(problem, told) : told.contains(problem) ? note(problem) : problem);
        }
        return eased;
    }

    private static List<Problem> ofKind(List<Problem> problems, String kind) {
        return problems.stream().filter(problem -> problem.kind().equals(kind)).toList();
    }

    private static long lines(List<Problem> problems) {
        return problems.stream().mapToInt(Problem::line).distinct().count();
    }

    /** It stays as bad as it is: what was not read is not danced. */
    private static Problem once(Problem first, List<Problem> told) {
        return new Problem(
                first.severity(),
                first.kind(),
                first.file(),
                first.line(),
                first.column(),
                first.sentence() + " " + lines(told) + " lines are like this (" + numbers(told)
                        + "), so Cuelead may not know this way of writing.",
                first.tryThis());
    }

    private static String numbers(List<Problem> told) {
        return Enumeration.of(
                told.stream().map(Problem::line).distinct().map(String::valueOf).toList());
    }

    private static Problem note(Problem problem) {
        return new Problem(
                Severity.NOTE,
                problem.kind(),
                problem.file(),
                problem.line(),
                problem.column(),
                problem.sentence(),
                problem.tryThis());
    }
}
