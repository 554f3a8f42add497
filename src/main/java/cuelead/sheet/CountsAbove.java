package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Several counts on a line of their own, and their steps in columns on the line below: each goes before its steps. */
final class CountsAbove {
    private static final String GAP = "\\t\\s*|\\s{2,}|\\s*\\|\\s*";
    private static final int FEWEST = 2;

    private CountsAbove() {}

    /** The same lines, one a group of counts. */
    static List<SheetLine> paired(List<SheetLine> lines) {
        List<SheetLine> paired = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<SheetLine> counts = counts(lines.get(i));
            Optional<Integer> below = counts.isEmpty() ? Optional.empty() : below(lines, i);
            List<SheetLine> steps =
                    below.map(lines::get).map(CountsAbove::cells).orElse(List.of());
            if (!counts.isEmpty() && counts.size() == steps.size()) {
                for (int cell = 0; cell < counts.size(); cell++) {
                    paired.add(steps.get(cell).behind(counts.get(cell).text() + " "));
                }
                i = below.orElseThrow();
            } else {
                paired.add(lines.get(i));
            }
        }
        return paired;
    }

    /** The cells of a line that has nothing but counts; empty where it has anything else, or counts once. */
    private static List<SheetLine> counts(SheetLine line) {
        List<SheetLine> cells = cells(line);
        boolean all = cells.stream().allMatch(CountsAbove::isCounts);
        return all && cells.size() >= FEWEST ? cells : List.of();
    }

    private static boolean isCounts(SheetLine cell) {
        return CountGroup.read(cell.text())
                .filter(group -> cell.text().substring(group.end()).chars().noneMatch(Character::isLetterOrDigit))
                .isPresent();
    }

    private static Optional<Integer> below(List<SheetLine> lines, int i) {
        int next = i + 1;
        return next < lines.size() && DanceLine.isDanced(lines.get(next).text()) ? Optional.of(next) : Optional.empty();
    }

    private static List<SheetLine> cells(SheetLine line) {
        List<SheetLine> cells = new ArrayList<>();
        int from = line.firstColumn() - 1;
        for (String cell : line.text().strip().split(GAP, -1)) {
            int at = line.text().indexOf(cell, from);
            if (!cell.isBlank()) {
                cells.add(line.part(at, at + cell.length()));
            }
            from = at + cell.length();
        }
        return cells;
    }
}
