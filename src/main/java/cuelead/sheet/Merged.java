package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * "Walk forward R (1), L (2)": steps with counts between them that make sense only together are read as one line,
 * "1,2 walk forward R, L". Steps that make sense by themselves keep a line of their own.
 */
final class Merged {
    private static final int MOST_TOGETHER = 8;

    private final Row row;

    private Merged(Row row) {
        this.row = row;
    }

    /** One line a group of counts, or more of them where they belong together. */
    static List<LaidLine> lines(Row row) {
        Merged merged = new Merged(row);
        List<LaidLine> lines = new ArrayList<>();
        int from = 0;
        while (from < row.counted().size()) {
            int to = merged.end(from);
            lines.add(merged.line(from, to).orElseThrow());
            from = to;
        }
        return lines;
    }

    /** Index behind the last group that belongs to the one at {@code from}. */
    private int end(int from) {
        int most = Math.min(row.counted().size(), from + MOST_TOGETHER);
        int end = from + 1;
        while (end < most && isLone(end) && line(from, end + 1).isPresent()) {
            end++;
        }
        boolean fits = fits(from, end);
        for (int to = end + 1; to <= most && !(fits && fits(to - 1, to)); to++) {
            boolean together = fits(from, to);
            end = together ? to : end;
            fits |= together;
        }
        return isLone(from) && end == from + 1 && line(from, from + 2).isPresent() ? from + 2 : end;
    }

    private boolean isLone(int index) {
        return row.counted().get(index).group().isLoneAnd(row.line().text());
    }

    private boolean fits(int from, int to) {
        return line(from, to)
                .filter(line -> line.fits() || (to == from + 1 && RepeatCall.isCounted(line.text())))
                .isPresent();
    }

    /** Empty where the counts together are none. */
    private Optional<LaidLine> line(int from, int to) {
        if (to > row.counted().size()) {
            return Optional.empty();
        }
        List<CountPlaces.Counted> groups = row.counted().subList(from, to);
        if (groups.size() == 1) {
            return Optional.of(LaidRow.line(row, groups.get(0)));
        }
        LaidLine.Builder builder = new LaidLine.Builder();
        builder.add(counts(groups), row.line(), groups.get(0).group().column() - 1);
        for (CountPlaces.Counted each : groups) {
            builder.add(row.line(), each.from(), each.to());
        }
        int tail = groups.get(groups.size() - 1).tail();
        int end = Easier.begin(row.line().text(), tail);
        LaidLine steps = builder.line();
        LaidLine whole = builder.add(row.line(), tail, end).line();
        boolean tells = !row.line().text().substring(tail, end).isBlank();
        boolean said = tells && row.line().fit().isOnlySaidBehind(steps.text(), whole.text());
        return Optional.of(said ? steps : whole)
                .filter(line -> CountGroup.read(line.text()).isPresent());
    }

    private String counts(List<CountPlaces.Counted> groups) {
        StringBuilder counts = new StringBuilder();
        for (CountPlaces.Counted each : groups) {
            boolean split = !each.group().counts().get(0).isWhole();
            boolean behindSplit = counts.length() > 0 && "&aA".indexOf(counts.charAt(counts.length() - 1)) >= 0;
            counts.append(counts.isEmpty() || split || behindSplit ? "" : ",")
                    .append(each.group().written(row.line().text()));
        }
        return counts.toString();
    }
}
