package cuelead.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A row of a table to lines. Cells stand side by side, parted by tabs, line beside line; but where two of them hold
 * whole columns of counts, as in a page that is laid out by a table, one is written after the other.
 */
final class Cells {
    private static final Pattern COUNTS = Pattern.compile("^\\W*\\d.*");
    private static final int FEW_COUNTS = 3;

    private Cells() {}

    /** @param cells the lines of each cell, from left to right */
    static List<String> lines(List<List<String>> cells) {
        List<List<String>> written =
                cells.stream().filter(cell -> !isBlank(cell)).toList();
        if (written.size() == 1 && !isBlank(cells.get(0))) {
            return written.get(0);
        }
        long columns = written.stream().filter(Cells::isColumnOfCounts).count();
        boolean isLayout = columns > 1 || written.stream().anyMatch(cell -> cell.size() > 1 && isUneven(cell, written));
        return isLayout ? written.stream().flatMap(List::stream).toList() : beside(cells);
    }

    /** Whether a line begins as count lines do: with a number, perhaps bracketed. */
    static boolean beginsWithCount(String line) {
        return COUNTS.matcher(line).matches();
    }

    private static boolean isBlank(List<String> cell) {
        return cell.stream().allMatch(String::isBlank);
    }

    private static boolean isColumnOfCounts(List<String> cell) {
        return cell.stream()
                        .filter(line -> beginsWithCount(line) && line.strip().length() > 2 * FEW_COUNTS)
                        .count()
                >= FEW_COUNTS;
    }

    /** A cell of several lines beside another one of several, but not as many: their lines do not belong together. */
    private static boolean isUneven(List<String> cell, List<List<String>> cells) {
        return cells.stream().anyMatch(other -> other.size() > 1 && other.size() != cell.size());
    }

    private static List<String> beside(List<List<String>> cells) {
        int longest = cells.stream().mapToInt(List::size).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < longest; i++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < cells.size(); column++) {
                List<String> cell = cells.get(column);
                line.append(column > 0 ? "\t" : "").append(i < cell.size() ? cell.get(i) : "");
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }
}
