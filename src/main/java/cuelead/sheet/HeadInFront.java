package cuelead.sheet;

import java.util.Optional;

/**
 * A heading on the line of its steps, whose counts stand behind them: "VINE, SCUFF: Step R to side, ... (1-4)". Words
 * before a colon, a dash or a full stop are a heading where the steps fill their counts only without them.
 *
 * @param from 0-based index of its first character
 * @param to   0-based index behind its last one
 * @param row  the same row, its first steps behind the heading
 */
record HeadInFront(int from, int to, Row row) {
    private static final int LONGEST = 120;

    static Optional<HeadInFront> of(Row row) {
        CountPlaces.Counted first = row.counted().get(0);
        String text = row.line().text();
        if (!row.countsBehind() || text.substring(first.from(), first.to()).isBlank()) {
            return Optional.empty();
        }
        int best = cost(row, first);
        int found = -1;
        int limit = Math.min(first.to(), first.from() + LONGEST);
        for (int at = first.from(); at < limit; at++) {
            int end = end(text, at);
            if (end > 0
                    && end < first.to()
                    && text.substring(first.from(), at).chars().anyMatch(Character::isLetter)) {
                int without = cost(row, new CountPlaces.Counted(first.group(), end, first.to(), first.tail()));
                found = without < best ? at : found;
                best = Math.min(best, without);
            }
        }
        return found < 0 ? Optional.empty() : Optional.of(at(row, first, found));
    }

    private static HeadInFront at(Row row, CountPlaces.Counted first, int found) {
        int end = end(row.line().text(), found);
        return new HeadInFront(
                first.from(),
                found,
                row.withFirst(new CountPlaces.Counted(first.group(), end, first.to(), first.tail())));
    }

    private static int cost(Row row, CountPlaces.Counted counted) {
        return LaidRow.line(row, counted).cost();
    }

    /** Index behind the mark that parts heading and steps here; 0 where there is none. */
    private static int end(String text, int at) {
        char c = text.charAt(at);
        boolean space = at + 1 < text.length() && Scanner.isSpace(text.charAt(at + 1));
        if (c == ':' || (c == '.' && space)) {
            return at + 1;
        }
        boolean dash = c == '-' && at > 0 && Scanner.isSpace(text.charAt(at - 1));
        int end = at;
        while (end < text.length() && text.charAt(end) == '-') {
            end++;
        }
        return dash && end < text.length() && Scanner.isSpace(text.charAt(end)) ? end : 0;
    }
}
