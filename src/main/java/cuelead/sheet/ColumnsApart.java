package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** A table that was copied column by column: several lines of counts alone, then as many lines of their steps. */
final class ColumnsApart {
    private static final int SHORTEST = 2;

    private final List<Row> rows;

    private ColumnsApart(List<Row> rows) {
        this.rows = rows;
    }

    /** The same rows, each line of steps below its counts. */
    static List<Row> beside(List<Row> rows) {
        return new ColumnsApart(rows).beside();
    }

    private List<Row> beside() {
        List<Row> beside = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            int counts = counts(i);
            int steps = steps(i);
            if (counts >= SHORTEST && steps(i + counts) == counts) {
                pair(beside, i, i + counts, counts);
                i += 2 * counts - 1;
            } else if (steps >= SHORTEST && counts(i + steps) == steps && !isStep(i - 1)) {
                pair(beside, i + steps, i, steps);
                i += 2 * steps - 1;
            } else {
                beside.add(rows.get(i));
            }
        }
        return beside;
    }

    private void pair(List<Row> beside, int counts, int steps, int number) {
        for (int i = 0; i < number; i++) {
            beside.add(rows.get(counts + i));
            beside.add(rows.get(steps + i));
        }
    }

    /** Lines of counts alone from here on. */
    private int counts(int from) {
        int at = from;
        while (at < rows.size() && rows.get(at).isBareCounts()) {
            at++;
        }
        return at - from;
    }

    /** Lines of steps without counts from here on. */
    private int steps(int from) {
        int at = from;
        while (isStep(at)) {
            at++;
        }
        return at - from;
    }

    private boolean isStep(int at) {
        return at >= 0
                && at < rows.size()
                && rows.get(at).kind() == LineKind.OTHER
                && DanceLine.isDanced(rows.get(at).line().text());
    }
}
