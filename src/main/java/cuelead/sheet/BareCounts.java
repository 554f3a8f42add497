package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Counts on a line of their own, their steps on the line below, or in every case on the line above. */
final class BareCounts {
    private final List<Row> rows;
    private final boolean above;

    private BareCounts(List<Row> rows) {
        this.rows = rows;
        this.above = stepsAreAbove();
    }

    /** The same rows, each of counts alone joined with its steps. */
    static List<Row> joined(List<Row> rows) {
        boolean any = rows.stream().anyMatch(Row::isBareCounts);
        return any ? new BareCounts(rows).joined() : rows;
    }

    /** The last line of counts alone tells: steps below it, or none. */
    private boolean stepsAreAbove() {
        for (int i = rows.size() - 1; i >= 0; i--) {
            if (rows.get(i).isBareCounts()) {
                boolean below = i + 1 < rows.size() && isSteps(rows.get(i + 1));
                boolean before = i > 0 && isSteps(rows.get(i - 1));
                return !below && before;
            }
        }
        return false;
    }

    /** What is danced, or danced again: "Repeat beats 13-18" is none of these counts. */
    private static boolean isSteps(Row row) {
        String text = row.line().text();
        return (row.kind() == LineKind.OTHER && DanceLine.isDanced(text)) || isRepeat(row);
    }

    private static boolean isRepeat(Row row) {
        return row.kind() == LineKind.OTHER
                && RepeatCall.read(row.line().text(), row.line().firstColumn() - 1)
                        .isPresent();
    }

    private List<Row> joined() {
        List<Row> joined = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Optional<Row> below = i + 1 < rows.size() ? Optional.of(rows.get(i + 1)) : Optional.empty();
            boolean bare = row.isBareCounts() && !row.isHeadingOf(below);
            if (bare && above && !joined.isEmpty() && isSteps(joined.get(joined.size() - 1))) {
                Row steps = joined.remove(joined.size() - 1);
                joined.add(join(row, List.of(steps)));
            } else if (bare && !above && i + 1 < rows.size() && isSteps(rows.get(i + 1))) {
                int end = end(row, i + 1);
                joined.add(join(row, rows.subList(i + 1, end)));
                i = end - 1;
            } else {
                joined.add(row);
            }
        }
        return joined;
    }

    /** As many lines of steps as fill the counts; one where none do. */
    private int end(Row counts, int first) {
        StringBuilder text = new StringBuilder(
                counts.counted().get(0).group().written(counts.line().text()));
        int longest = first + 1;
        for (int end = first; end < rows.size() && isSteps(rows.get(end)); end++) {
            if (end > first && rows.get(end).apart()) {
                return longest;
            }
            text.append(end == first ? " " : ", ")
                    .append(rows.get(end).line().text().strip());
            longest = counts.line().fit().fits(text.toString()) ? end + 1 : longest;
        }
        return longest;
    }

    /** Steps keep their line; the counts go before them. */
    private static Row join(Row counts, List<Row> steps) {
        CountGroup group = counts.counted().get(0).group();
        String head = group.written(counts.line().text()) + " ";
        SheetLine line = steps.get(0).line().behind(head);
        CountGroup moved = CountGroup.read(line.text()).orElse(group);
        int from = head.length();
        return new Row(
                line,
                LineKind.COUNTS,
                List.of(new CountPlaces.Counted(
                        moved, from, line.text().length(), line.text().length())),
                counts.apart(),
                steps.stream().skip(1).map(Row::line).toList());
    }
}
