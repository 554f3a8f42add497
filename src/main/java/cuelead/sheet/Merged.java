package cuelead.sheet;

import java.util.Optional;

/**
 * "Walk forward R (1), L (2)": steps with counts between them that make sense only together are read as one line,
 * "1-2 walk forward R, L".
 */
final class Merged {
    private Merged() {}

    /** Empty where every group stands for itself, or all together make no more sense. */
    static Optional<LaidLine> of(Row row) {
        boolean lone = row.counted().stream()
                .anyMatch(each -> each.group().isLoneAnd(row.line().text()));
        boolean apart = !lone
                && (row.counted().size() < 2
                        || row.counted().stream()
                                .allMatch(each ->
                                        LineFit.fits(LaidRow.line(row, each).text())));
        if (apart) {
            return Optional.empty();
        }
        LaidLine.Builder builder = new LaidLine.Builder();
        StringBuilder counts = new StringBuilder();
        for (CountPlaces.Counted each : row.counted()) {
            boolean split = !each.group().counts().get(0).isWhole();
            boolean behindSplit = counts.length() > 0 && "&aA".indexOf(counts.charAt(counts.length() - 1)) >= 0;
            counts.append(counts.isEmpty() || split || behindSplit ? "" : ",")
                    .append(each.group().written(row.line().text()));
        }
        CountPlaces.Counted first = row.counted().get(0);
        builder.add(counts.toString(), row.line(), first.group().column() - 1);
        for (CountPlaces.Counted each : row.counted()) {
            builder.add(row.line(), each.from(), each.to());
        }
        int tail = row.counted().get(row.counted().size() - 1).tail();
        builder.add(row.line(), tail, row.line().text().length());
        LaidLine merged = builder.line();
        boolean read = CountGroup.read(merged.text()).isPresent();
        return read && (lone || LineFit.fits(merged.text())) ? Optional.of(merged) : Optional.empty();
    }
}
