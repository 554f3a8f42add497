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

    private LoneAnd() {}

    /** Whether a row begins so and dances. */
    static boolean isLone(Row row) {
        return row.kind() == LineKind.OTHER
                && AND.matcher(row.line().text()).find()
                && DanceLine.isDanced(row.line().text());
    }

    /** Empty where the line above has no whole count at its end, or both together make no sense. */
    static Optional<LaidLine> joined(LaidLine above, Row row) {
        Optional<CountGroup> group = CountGroup.read(above.text());
        Matcher and = AND.matcher(row.line().text());
        boolean whole = group.filter(
                        found -> found.counts().get(found.counts().size() - 1).isWhole())
                .isPresent();
        if (!whole || !and.find()) {
            return Optional.empty();
        }
        int end = group.get().end();
        LaidLine counted = above.with(end, end, and.group(1).equals("a") ? "a" : "&");
        LaidLine joined = new LaidLine.Builder()
                .add(counted)
                .add(",", row.line(), and.end())
                .add(row.line(), and.end(), row.line().text().length())
                .line();
        boolean alone = LineFit.fits(above.text());
        return alone && LineFit.fits(joined.text()) ? Optional.of(joined) : Optional.empty();
    }
}
