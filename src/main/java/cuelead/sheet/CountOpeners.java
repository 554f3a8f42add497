package cuelead.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a sentence says before its counts: "Then on 5-6 side left", "Next, counts 1-4: vine", "Steps 1,2 are side, close". */
final class CountOpeners {
    private static final String LINKS =
            "(?:(?:and|then|now|next|so|ok|okay|after that|from there|finally|lastly|first|firstly|we|you|do|it's|its|that's|here)\\b[ ,:]*)*";
    private static final String PLACE = "(?:(?:on|for|during|over|from|at|in|by)\\s+)?(?:the\\s+)?";
    private static final String UNIT = "(?:(?:counts?|cts?\\.?|beats?|steps?|numbers?|nos?\\.?)\\s*)?";
    /** All of it, as it may stand before counts in words or in figures; it may be empty. */
    static final String OPENER = LINKS + PLACE + UNIT;

    private static final Pattern HEAD =
            Pattern.compile("^(\\W*(?=[A-Za-z])" + OPENER + ")(?=\\d)", Pattern.CASE_INSENSITIVE);
    /** Words that make one number alone a count. */
    private static final Pattern TOLD =
            Pattern.compile("\\b(?:counts?|cts?|beats?|numbers?|on)\\b", Pattern.CASE_INSENSITIVE);

    /** "Next 8: vine right, vine left": so many counts. */
    private static final Pattern LENGTH = Pattern.compile("\\b(?:first|next)\\s*$", Pattern.CASE_INSENSITIVE);

    private CountOpeners() {}

    /** The same lines, beginning with their counts. */
    static List<SheetLine> left(List<SheetLine> lines) {
        return lines.stream().map(CountOpeners::left).toList();
    }

    private static SheetLine left(SheetLine line) {
        Matcher head = HEAD.matcher(line.text());
        if (!head.find() || CountGroup.read(line.text()).isPresent()) {
            return line;
        }
        String unit = MANY.matcher(head.group()).find() ? "counts " : "";
        return CountGroup.read(line.text(), head.end())
                .filter(group -> isPlain(line.text(), group, head.group()))
                .map(group -> line.with(0, head.end(), unit))
                .orElse(line);
    }

    private static final Pattern MANY =
            Pattern.compile("\\b(?:counts|cts|beats|steps|numbers)\\b", Pattern.CASE_INSENSITIVE);

    /** Several counts, or one that is told as such or parted from its steps; and steps behind them. */
    private static boolean isPlain(String text, CountGroup group, String opener) {
        String behind = text.substring(group.end());
        if (group.counts().size() == 1 && LENGTH.matcher(opener).find()) {
            return false;
        }
        boolean counts = group.counts().size() > 1
                || TOLD.matcher(opener).find()
                || behind.matches("\\s*(?:[:.)=-]|(?:,|&|and\\b|to\\b)\\s*\\d).*");
        return counts && DanceLine.isDanced(behind);
    }
}
