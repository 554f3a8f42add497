package cuelead.sheet;

import java.util.List;

/** Finds the line where the header ends and the dance begins. */
final class BodyStart {
    private final List<Row> rows;

    BodyStart(List<Row> rows) {
        this.rows = rows;
    }

    /** Index of the first row of the dance, its heading included; behind all rows where there is no dance. */
    int index() {
        for (int i = 0; i < rows.size(); i++) {
            if (begins(rows.get(i), i)) {
                return i > 1 && isHeading(i - 1, rows.get(i)) ? i - 1 : i;
            }
        }
        return rows.size();
    }

    private static boolean begins(Row row, int index) {
        if (row.kind() == LineKind.SECTION) {
            return index > 0
                    || SectionHead.read(row.line().text())
                            .filter(SectionHead::hasRange)
                            .isPresent();
        }
        return row.isCounted()
                && row.firstCount() <= 1
                && (row.isBareCounts()
                        || DanceLine.isDanced(row.prose(row.counted().get(0))));
    }

    /** Words that are no fact of the header, directly above the counts. */
    private boolean isHeading(int index, Row below) {
        Row row = rows.get(index);
        boolean words = row.kind() == LineKind.OTHER && !HeaderFacts.isFact(row.line());
        boolean names = DanceLine.isDanced(row.line().text());
        return below.isCounted() && words && (names || (row.apart() && !below.apart()));
    }
}
