package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How words that were not understood are marked in a sheet that is written: {@code [not understood: wobble the knob]}.
 * Whatever stands in the brackets is not read again: for the layout and the grammar it is one strange word.
 */
final class NotUnderstood {
    private static final Pattern MARK =
            Pattern.compile("\\[not understood(?::\\s*([^\\]]*))?\\]", Pattern.CASE_INSENSITIVE);
    /** No word of the trade, nor near one; it begins a sentence, so that a line of it does not go on from the one above. */
    private static final String WORD = "Notunderstood";
    /** The same where the author's words may turn someone. */
    private static final String TURNING = "Notunderstoodturning";

    private NotUnderstood() {}

    /** {@code words} with their mark; they have no square brackets. */
    static String written(String words) {
        return words.isEmpty() ? "[not understood]" : "[not understood: " + words + "]";
    }

    /** Words that may stand in a mark: the first square bracket would end it. */
    static String inside(String words) {
        return words.replace('[', '(').replace(']', ')').strip();
    }

    /** Whether a word stands for marked ones. */
    static boolean isWord(String word) {
        return word.equalsIgnoreCase(WORD) || word.equalsIgnoreCase(TURNING);
    }

    /** Whether a word stands for marked ones that may turn. */
    static boolean mayTurn(String word) {
        return word.equalsIgnoreCase(TURNING);
    }

    /** Whether a line begins with marked words. */
    static boolean begins(String text) {
        return MARK.matcher(text.strip()).lookingAt();
    }

    /** The words in the mark that a text begins with; the text itself where it begins with none. */
    static String unmarked(String text) {
        Matcher mark = MARK.matcher(text);
        return !mark.lookingAt()
                ? text
                : mark.group(1) == null ? "" : mark.group(1).strip();
    }

    /** The same lines with one word for each mark. */
    static List<SheetLine> masked(List<SheetLine> lines) {
        List<SheetLine> masked = new ArrayList<>();
        lines.forEach(line -> masked.add(line.text().indexOf('[') < 0 ? line : masked(line)));
        return masked;
    }

    private static SheetLine masked(SheetLine line) {
        SheetLine masked = line;
        Matcher mark = MARK.matcher(masked.text());
        boolean isAll = mark.lookingAt() && masked.text().substring(mark.end()).isBlank();
        mark.reset();
        while (mark.find()) {
            boolean turns = mark.group(1) != null && DanceLine.mayTurn(mark.group(1));
            masked = masked.with(mark.start(), mark.end(), turns ? TURNING : WORD);
            mark = MARK.matcher(masked.text());
        }
        return isAll ? masked.as(LineKind.OTHER) : masked;
    }
}
