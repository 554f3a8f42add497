package cuelead.window.song;

import cuelead.plan.Timeline;
import cuelead.song.Hearing;
import java.util.List;
import java.util.Optional;

/**
 * A song in rows.
 *
 * @param rows  in order; together they hold each beat once; never empty
 * @param usual counts of a usual row: eight, or six in waltz
 */
record Rows(List<Row> rows, int usual) {
    Rows {
        rows = List.copyOf(rows);
    }

    /** @param timeline the dance over the same beats; empty where there is none */
    static Rows of(Hearing hearing, Optional<Timeline> timeline) {
        return new RowMaker(hearing, timeline).make();
    }

    /** Cells of the longest row. */
    int across() {
        return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(usual);
    }

    int beats() {
        return rows.get(rows.size() - 1).last().beat() + 1;
    }

    /** Index of the row that holds a beat. */
    int rowOf(int beat) {
        int low = 0;
        int high = rows.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (rows.get(middle).first().beat() <= beat) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    Cell cell(int beat) {
        Row row = rows.get(rowOf(beat));
        return row.cells().get(beat - row.first().beat());
    }
}
