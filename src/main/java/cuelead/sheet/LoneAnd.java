package cuelead.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An "and" on a line of its own: "1 Step R", "&amp; close L", "2 step R". Its step is danced half a count behind the line
 * above, so both are one line, "1&amp; Step R, close L".
 */
final class LoneAnd {
    private static final Pattern AND =
            Pattern.compile("^\\s*[(\\[]?(&|\\+|and|a)[)\\]]?(?:\\s*[:.)=-])?(?:\\s\\s+|\\t|\\s+)(?=\\S)");
    /** "Close L   &", "Close L (&)" */
    private static final Pattern BEHIND = Pattern.compile("(?:\\s\\s+|\\t|,\\s|\\s*[(\\[])(&|\\+|and|a)[)\\]]?\\s*$");

    private LoneAnd() {}

    /** The sign, and where the steps beside it begin and end. */
    private record Found(String sign, int from, int to) {
        static Optional<Found> in(String text) {
            Matcher before = AND.matcher(text);
            if (before.find()) {
                return Optional.of(new Found(before.group(1), before.end(), text.length()));
            }
            Matcher behind = BEHIND.matcher(text);
            return behind.find() ? Optional.of(new Found(behind.group(1), 0, behind.start())) : Optional.empty();
        }
    }

    /** Whether a row begins so and dances. */
    static boolean isLone(Row row) {
        return row.kind() == LineKind.OTHER
                && Found.in(row.line().text()).isPresent()
                && DanceLine.isDanced(row.line().text());
    }

    /** Empty where the line above has no whole count at its end, or both together make no sense. */
    static Optional<LaidLine> joined(LaidLine above, Row row) {
        Optional<CountGroup> group = CountGroup.read(above.text());
        Optional<Found> and = Found.in(row.line().text());
        boolean whole = group.filter(
                        found -> found.counts().get(found.counts().size() - 1).isWhole())
                .isPresent();
        if (!whole || and.isEmpty()) {
            return Optional.empty();
        }
        int end = group.get().end();
        LaidLine counted = above.with(end, end, and.get().sign().equals("a") ? "a" : "&");
        LaidLine joined = new LaidLine.Builder()
                .add(counted)
                .add(",", row.line(), and.get().from())
                .add(row.line(), and.get().from(), and.get().to())
                .line();
        boolean alone = above.fits();
        return alone && joined.fits() ? Optional.of(joined) : Optional.empty();
    }
}
