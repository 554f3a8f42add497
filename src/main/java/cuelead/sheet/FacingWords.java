package cuelead.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words within a sentence of steps that only tell where they bring the dancers: "to face 12:00", "to end at the front". */
final class FacingWords {
    private static final String WALL =
            "(?:the\\s+|your\\s+)?(?:front|back|home|\\d{1,2}[:.]\\d\\d|\\d{1,2}\\s*o'?\\s?clock)(?:\\s+wall)?\\b";
    private static final String TURNED = "(?<=(?:\\d/\\d|half|quarter|turn|pivot|unwind|spin)[^,;.:]{0,30})";
    private static final Pattern SAID = Pattern.compile(
            "[,\\s]\\s*(?:\\b(?:to|and|so|that|you|you'll|will|are|now)\\s+)*(?:"
                    + "(?:end(?:s|ing)?|finish(?:es|ing)?|bring(?:s|ing)?\\s+you|get(?:ting)?\\s+back)\\s+(?:up\\s+)?"
                    + "(?:(?:facing|to|at|on)\\s+)?" + WALL
                    + "|\\b(?:to\\s+)?fac(?:e|ing)\\s+(?:to\\s+)?" + WALL
                    + "|" + TURNED + "\\b(?:to|at|towards?|on|for)\\s+" + WALL + ")",
            Pattern.CASE_INSENSITIVE);

    private FacingWords() {}

    /** The same line with spaces in their place. */
    static SheetLine without(SheetLine line) {
        Matcher said = SAID.matcher(line.text());
        SheetLine without = line;
        while (said.find()) {
            without = without.with(said.start(), said.end(), " ".repeat(said.end() - said.start()));
        }
        return without;
    }
}
