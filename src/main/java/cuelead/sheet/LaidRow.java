package cuelead.sheet;

/** Lays a row of the sheet: its counts, then their steps, then what stands behind both. */
final class LaidRow {
    private LaidRow() {}

    static LaidLine line(Row row, CountPlaces.Counted each) {
        LaidLine.Builder builder = new LaidLine.Builder()
                .add(
                        each.group().written(row.line().text()),
                        row.line(),
                        each.group().column() - 1)
                .add(row.line(), each.from(), each.to());
        if (!row.line().text().substring(each.tail()).isBlank()) {
            builder.add(row.line(), each.tail(), row.line().text().length());
        }
        for (SheetLine more : row.more()) {
            builder.add(",", more, 0)
                    .add(more, more.firstColumn() - 1, more.text().length());
        }
        return builder.line();
    }
}
