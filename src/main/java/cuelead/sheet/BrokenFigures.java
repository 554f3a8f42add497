package cuelead.sheet;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lines that name own figures whose words are not understood: that is told where they are defined. */
final class BrokenFigures {
    private final OwnFigures own;
    private final Map<Integer, List<String>> namesByLine = new TreeMap<>();

    BrokenFigures(OwnFigures own) {
        this.own = own;
    }

    void look(String text, int line) {
        List<String> names = own.notUnderstood(text);
        if (!names.isEmpty()) {
            namesByLine.putIfAbsent(line, names);
        }
    }

    /** What stands on those lines gives way to a note. */
    List<Problem> instead(List<Problem> found, String fileName) {
        List<Problem> kept = new ArrayList<>(found.stream()
                .filter(problem -> !namesByLine.containsKey(problem.line()))
                .toList());
        namesByLine.forEach((line, names) -> kept.add(new Problem(
                Problem.Severity.NOTE,
                "own_figure",
                fileName,
                line,
                0,
                String.join(" and ", names) + " is not understood as your file of figures has it.",
                "")));
        kept.sort(Comparator.comparingInt(Problem::line));
        return kept;
    }
}
