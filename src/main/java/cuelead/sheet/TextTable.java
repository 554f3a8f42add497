package cuelead.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A table that was pasted as text: counts, then columns parted by wide gaps, of which one tells the steps and the others
 * something else (the word to call, the way to go). Only the steps are kept, with the clock times; a row whose first cell
 * is empty goes on with the cells above it. What tells is that the cells of one column fill the counts and whole lines do
 * not.
 */
final class TextTable {
    private static final Pattern GAP = Pattern.compile("\\t\\s*|\\s{2,}");
    private static final Pattern CLOCK = Pattern.compile("[\\[(]?\\d{1,2}(?:[:.]\\d\\d)?(?: ?o'?clock)?[\\])]?");
    private static final int FEWEST_ROWS = 4;
    /** Beside the counts. */
    private static final int FEWEST_COLUMNS = 2;
    /** Characters by which the cells of a column may stand apart. */
    private static final int SLACK = 2;

    private final List<SheetLine> lines;
    private final List<SheetLine> rows;
    /** 0-based index at which each column behind the counts begins. */
    private final List<Integer> starts;

    private TextTable(List<SheetLine> lines) {
        this.lines = lines;
        this.rows = lines.stream().filter(TextTable::isRow).toList();
        this.starts = starts();
    }

    /** The same lines, each row of the table with nothing but its counts, its steps and its clock times. */
    static List<SheetLine> steps(List<SheetLine> lines) {
        TextTable table = new TextTable(TabStops.aligned(lines));
        boolean columns = table.rows.size() >= FEWEST_ROWS && table.starts.size() >= FEWEST_COLUMNS;
        return columns ? table.steps().orElse(lines) : lines;
    }

    /** Counts with a gap behind them. */
    private static boolean isRow(SheetLine line) {
        Matcher gap = GAP.matcher(line.text());
        return CountGroup.read(line.text())
                .filter(group -> gap.find(group.end())
                        && line.text().substring(group.end(), gap.start()).isBlank())
                .isPresent();
    }

    /** Where cells of several rows begin. */
    private List<Integer> starts() {
        Map<Integer, Integer> found = new TreeMap<>();
        for (SheetLine row : rows) {
            Matcher gap = GAP.matcher(row.text());
            while (gap.find()) {
                if (gap.start() > 0 && gap.end() < row.text().length()) {
                    found.merge(gap.end(), 1, Integer::sum);
                }
            }
        }
        List<Integer> begun = new ArrayList<>();
        for (Map.Entry<Integer, Integer> start : found.entrySet()) {
            boolean near = !begun.isEmpty() && start.getKey() - begun.get(begun.size() - 1) <= SLACK;
            if (!near && start.getValue() >= FEWEST_ROWS && start.getValue() * 3 >= rows.size()) {
                begun.add(start.getKey());
            }
        }
        return begun;
    }

    /** Empty where no column tells more than the whole lines. */
    private Optional<List<SheetLine>> steps() {
        List<Integer> columns = IntStream.range(0, starts.size()).boxed().toList();
        Set<Integer> clocks = columns.stream().filter(this::isOfClocks).collect(Collectors.toSet());
        Map<Integer, Long> fitting = columns.stream()
                .collect(Collectors.toMap(
                        Function.identity(),
                        column -> clocks.contains(column) ? 0 : fitting(kept(List.of(column), column))));
        long most = fitting.values().stream().mapToLong(Long::longValue).max().orElse(0);
        int best = columns.stream()
                .filter(column -> fitting.get(column) * 3 >= most * 2)
                .max(Comparator.comparing(this::letters))
                .orElse(0);
        List<Integer> others = columns.stream().filter(column -> column != best).toList();
        boolean table = others.stream().noneMatch(this::isOfCounts) && !clocks.containsAll(others);
        boolean better = table && fitting.get(best) >= FEWEST_ROWS && fitting(lines) * 2 <= fitting.get(best);
        List<Integer> told = columns.stream()
                .filter(column -> column == best || clocks.contains(column))
                .toList();
        return better ? Optional.of(kept(told, best)) : Optional.empty();
    }

    /** Rows that fill their counts. */
    private static long fitting(List<SheetLine> laid) {
        return laid.stream()
                .filter(line -> CountGroup.read(line.text()).isPresent())
                .filter(line -> line.fits() || RepeatCall.isCounted(line.text()))
                .count();
    }

    /** How much is told in a column; steps take the most words. */
    private int letters(int column) {
        return rows.stream().mapToInt(row -> cell(row, column).strip().length()).sum();
    }

    private boolean isOfCounts(int column) {
        return rows.stream()
                        .filter(row -> CountGroup.read(cell(row, column)).isPresent())
                        .count()
                >= FEWEST_ROWS;
    }

    private boolean isOfClocks(int column) {
        List<String> cells = rows.stream()
                .map(row -> cell(row, column).strip())
                .filter(cell -> !cell.isEmpty())
                .toList();
        return !cells.isEmpty()
                && cells.stream().allMatch(cell -> CLOCK.matcher(cell).matches());
    }

    /** The lines with these columns only, of which one has the steps. */
    private List<SheetLine> kept(List<Integer> columns, int steps) {
        List<SheetLine> kept = new ArrayList<>();
        int open = -1;
        for (SheetLine line : lines) {
            if (isRow(line)) {
                open = kept.size();
                int end = CountGroup.read(line.text()).orElseThrow().end();
                kept.add(only(line, columns, line.part(0, end)));
            } else if (open >= 0 && isMore(line)) {
                kept.set(open, only(line, List.of(steps), kept.get(open)));
            } else if (open >= 0 && completes(kept.get(open), line)) {
                kept.set(open, kept.get(open).and(line));
            } else {
                open = -1;
                kept.add(line);
            }
        }
        return kept;
    }

    /** An empty first cell. */
    private boolean isMore(SheetLine line) {
        return !line.isBlank() && line.firstColumn() - 1 >= starts.get(0) - SLACK;
    }

    /** The rest of a cell of which nothing but its words is left. */
    private static boolean completes(SheetLine row, SheetLine line) {
        return !line.isBlank()
                && LineKind.of(line) == LineKind.OTHER
                && !row.fits()
                && row.and(line).fits();
    }

    /** {@code before} with the cells of these columns behind it. */
    private SheetLine only(SheetLine line, List<Integer> columns, SheetLine before) {
        SheetLine only = before;
        for (int column : columns) {
            int from = from(line, column);
            int to = to(line, column);
            SheetLine cell = line.part(Math.min(from, to), to);
            only = cell.isBlank() ? only : only.and(cell);
        }
        return only;
    }

    private String cell(SheetLine line, int column) {
        int to = to(line, column);
        return line.text().substring(Math.min(from(line, column), to), to);
    }

    /** 0-based index where the cell of a column begins; the length of the line where it has none. */
    private int from(SheetLine line, int column) {
        int start = starts.get(column);
        String text = line.text();
        for (int at = start; at <= start + SLACK && at < text.length(); at++) {
            if (at > 0 && Scanner.isSpace(text.charAt(at - 1)) && !Scanner.isSpace(text.charAt(at))) {
                return at;
            }
        }
        for (int at = start - 1; at >= Math.max(1, start - SLACK) && at < text.length(); at--) {
            if (Scanner.isSpace(text.charAt(at - 1)) && !Scanner.isSpace(text.charAt(at))) {
                return at;
            }
        }
        return Optional.of(start).filter(at -> at < text.length()).orElse(text.length());
    }

    private int to(SheetLine line, int column) {
        return column + 1 < starts.size()
                ? Math.min(line.text().length(), from(line, column + 1))
                : line.text().length();
    }
}
