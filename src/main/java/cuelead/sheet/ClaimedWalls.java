package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Restart;
import cuelead.english.Enumeration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether tags and restarts come on the walls that the lines above the dance name: "2 restarts (walls 2 and 5)". */
final class ClaimedWalls {
    /** Walls that are not listed one by one, or beside which a tag comes otherwise than behind them. */
    private static final Pattern OTHERWISE = Pattern.compile(
            "\\b(?:every|each|all|odd|even|other|before|start\\w*|begin\\w*|\\d+\\s*(?:to|thru|through|-)\\s*\\d+)\\b",
            Pattern.CASE_INSENSITIVE);

    private final Dance dance;
    private final Problems problems;

    ClaimedWalls(Dance dance, Problems problems) {
        this.dance = dance;
        this.problems = problems;
    }

    /** {@code known}: of what the numbers are wrong already. */
    void check(List<SheetLine> above, Set<String> known) {
        List<SheetLine> clauses = above.stream()
                .filter(line -> !line.isBlank())
                .flatMap(line -> NoteClauses.notes(line).stream())
                .filter(SheetLine::namesWall)
                .toList();
        if (!known.contains("restart")) {
            check("restart", clauses, dance.restarts().stream().map(Restart::wall));
        }
        if (!known.contains("tag")) {
            check("tag", clauses, dance.tags().stream().flatMap(tag -> tag.afterWalls().stream()));
        }
    }

    /** What it is about; empty where one clause tells of both. */
    private static String what(SheetLine clause) {
        boolean restart = NoteClauses.tellsOfRestart(clause);
        return restart == NoteClauses.tellsOfTag(clause) ? "" : restart ? "restart" : "tag";
    }

    private static List<Integer> walls(SheetLine clause) {
        return WallNote.read(clause.tokens()).walls();
    }

    private void check(String what, List<SheetLine> all, Stream<Integer> written) {
        List<SheetLine> clauses =
                all.stream().filter(clause -> what(clause).equals(what)).toList();
        boolean listed = clauses.stream()
                .noneMatch(clause -> OTHERWISE.matcher(clause.text()).find());
        Set<Integer> stated = clauses.stream()
                .flatMap(clause -> walls(clause).stream())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<Integer> found = written.collect(Collectors.toCollection(TreeSet::new));
        if (clauses.isEmpty() || stated.isEmpty() || !listed || stated.equals(found)) {
            return;
        }
        SheetLine at = clauses.stream()
                .filter(clause -> !found.containsAll(walls(clause)))
                .findFirst()
                .orElse(clauses.get(clauses.size() - 1));
        problems.error(
                ClaimedExtras.KIND,
                at.number(),
                at.at(at.firstColumn() - 1).column(),
                sentence(what, stated, found),
                found.isEmpty() ? "Tell it below the dance too, or leave it out here." : "Check which is right.");
    }

    private static String sentence(String what, Set<Integer> stated, Set<Integer> found) {
        String place = what.equals("tag") ? " after " : " on ";
        return "The " + what + (stated.size() == 1 ? " is" : "s are") + place + walls(stated) + " here, but "
                + (found.isEmpty() ? "none is told below." : "below" + place + walls(found) + ".");
    }

    private static String walls(Set<Integer> walls) {
        List<String> numbers = walls.stream().map(String::valueOf).toList();
        return (numbers.size() == 1 ? "wall " : "walls ") + Enumeration.of(numbers);
    }
}
