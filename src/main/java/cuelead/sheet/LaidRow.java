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
        String steps = each.group().written(row.line().text()) + " " + row.prose(each);
        int end = Easier.begin(row.line().text(), each.tail());
        String tail = row.line().text().substring(each.tail(), end);
        if (!tail.isBlank() && !row.line().fit().isOnlySaidBehind(steps, steps + tail)) {
            builder.add(row.line(), Math.min(end, remark(row.line().text(), each.tail())), end);
        }
        for (SheetLine more : row.more()) {
            builder.add(",", more, 0)
                    .add(more, more.firstColumn() - 1, more.text().length());
        }
        return builder.line();
    }

    /** Of a sentence that tells where the dancers face the clock time is enough: "You're at 3:00 now." */
    private static int remark(String text, int tail) {
        return Scanner.tokens(text, tail).stream()
                .filter(token -> token.is(Token.Kind.CLOCK))
                .map(token -> token.column() - 1)
                .findFirst()
                .orElse(tail);
    }
}
