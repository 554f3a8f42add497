package cuelead.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * "Pivot 1/2 turn right on ball of left foot, stepping right next to left" and "on ball of left pivot 1/2 right and step
 * right together": one turn on one foot with the step that ends it, as in a Monterey, where "pivot" alone would mean two
 * steps.
 */
final class TurnedOnBall {
    private static final String FOOT = "(?:the |your )?(?:left|right|lf|rf|l|r)\\b(?: foot)?";
    private static final String STEPS =
            ",?\\s+(?:and |while )?(?:step(?:ping)?|clos(?:e|ing)|bring(?:ing)?|plac(?:e|ing))\\b";
    private static final Pattern PIVOT = Pattern.compile(
            "\\bpivot(?:ing)?\\b(?=[^,;.(]*\\bon (?:(?:the )?ball of )?" + FOOT + STEPS + ")"
                    + "|(?<=\\bon ball of (?:the |your )?(?:left|right|lf|rf|l|r)(?: foot)?,? )pivot(?:ing)?\\b(?=[^,;.(]*"
                    + STEPS + ")",
            Pattern.CASE_INSENSITIVE);

    private TurnedOnBall() {}

    /** The same lines with the word for any turn. */
    static List<SheetLine> asTurns(List<SheetLine> lines) {
        return lines.stream().map(TurnedOnBall::asTurn).toList();
    }

    private static SheetLine asTurn(SheetLine line) {
        if (!line.text().toLowerCase(Locale.ROOT).contains("pivot")) {
            return line;
        }
        Matcher pivot = PIVOT.matcher(line.text());
        return pivot.find() ? asTurn(line.with(pivot.start(), pivot.end(), "turn")) : line;
    }
}
