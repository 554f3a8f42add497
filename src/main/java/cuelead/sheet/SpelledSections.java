package cuelead.sheet;

import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sections told in words before their counts: "Section four: on count 1 ...", "In the second eight, counts 1-2 ...". */
final class SpelledSections {
    private static final int MOST = 12;
    private static final int WHOLE = 8;
    private static final String NUMBER = String.join("|", NumberWords.fromOneTo(MOST));
    private static final String ORDINAL =
            "first|second|third|fourth|fifth|sixth|seventh|eighth|1st|2nd|3rd|4th|5th|6th|7th|8th|next|last|final";
    private static final String UNIT = "(?:section|eight|8|set|block|phrase|verse)";
    private static final Pattern HEAD = Pattern.compile(
            "^\\W*(?:(?:and|then|now|in|for|on|the|our|so|next)\\s+)*(?:" + UNIT + "\\s+(?:number\\s+|no\\.?\\s+)?(?:"
                    + NUMBER + "|\\d{1,2})|(?:" + ORDINAL + ")\\s+" + UNIT
                    + "(?:\\s+of\\s+\\d+)?)\\b\\s*(?:is\\b\\s*)?[-:,.;]+\\s*(?=\\w)",
            Pattern.CASE_INSENSITIVE);

    private SpelledSections() {}

    /** The same lines; head and steps stand on lines of their own. */
    static List<SheetLine> parted(List<SheetLine> lines) {
        List<SheetLine> parted = new ArrayList<>();
        int last = 0;
        for (SheetLine line : lines) {
            Matcher head = HEAD.matcher(line.text());
            boolean heads = head.find() && begins(line.text().substring(head.end()));
            if (heads) {
                last++;
                parted.add(line.part(0, head.end()).with(0, head.end(), "Section " + last + ":"));
                parted.add(line.part(head.end(), line.text().length()));
            } else {
                parted.add(line);
            }
        }
        return parted;
    }

    /** Steps with counts come next. */
    private static boolean begins(String words) {
        String usual =
                CountOpeners.left(List.of(new SheetLine(1, words))).get(0).text();
        boolean first = CountPlaces.of(usual, 0).stream()
                .limit(1)
                .anyMatch(counted -> counted.group().counts().get(0).number() % WHOLE == 1);
        return (first || SPOKEN.matcher(words).find()) && DanceLine.isDanced(words);
    }

    private static final Pattern SPOKEN =
            Pattern.compile("\\b(?:on|for|counts?|beats?) (?:" + NUMBER + ")\\b", Pattern.CASE_INSENSITIVE);
}
