package cuelead.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Other words for what is told of walls, in the usual ones: "Rst" and "recommence" for a restart, "fcg" for facing, "End:"
 * for the ending, and bars for counts where a wall stops ("dance bars 1-8 only").
 */
final class ShortTerms {
    private static final int FLAGS = Pattern.CASE_INSENSITIVE;
    private static final List<Map.Entry<Pattern, String>> USUAL = List.of(
            Map.entry(Pattern.compile("\\b(?:rst|r'start|rstrt|restrt|re-start)(?=s?\\b)", FLAGS), "restart"),
            Map.entry(Pattern.compile("\\b(?:fcg|fcng|f/c|facg)\\b\\.?", FLAGS), "facing"),
            Map.entry(Pattern.compile("(?<=\\b(?:after|aft|to) )c\\.?\\s?(?=\\d)", FLAGS), "count "),
            Map.entry(Pattern.compile("\\baft\\b\\.?(?=\\s*\\d)", FLAGS), "after"),
            Map.entry(Pattern.compile("^(\\W*)end(?=\\s*[:=-]\\s)", FLAGS), "$1Ending"));
    /** "On wall 3 dance 24 counts and recommence"; without a wall it is the end of every wall. */
    private static final List<Map.Entry<Pattern, String>> OF_WALL =
            List.of(Map.entry(Pattern.compile("\\bre-?commence(?=s?\\b)", FLAGS), "restart"));

    private static final Pattern BARS =
            Pattern.compile("\\b(?:bars?|measures?)\\s+(\\d{1,2})(?:\\s*(?:-|to|through|thru)\\s*(\\d{1,2}))?", FLAGS);
    private static final int BEATS = 4;
    private static final int BEATS_OF_WALTZ = 3;

    private ShortTerms() {}

    /** The same lines in the usual words. */
    static List<SheetLine> spelled(List<SheetLine> lines) {
        boolean waltz = lines.stream()
                .anyMatch(line -> line.text().toLowerCase(Locale.ROOT).contains("waltz"));
        return lines.stream()
                .map(line -> words(words(line, USUAL), ofWall(line)))
                .map(line -> bars(line, waltz ? BEATS_OF_WALTZ : BEATS))
                .toList();
    }

    private static List<Map.Entry<Pattern, String>> ofWall(SheetLine line) {
        return line.namesWall() ? OF_WALL : List.of();
    }

    private static SheetLine words(SheetLine line, List<Map.Entry<Pattern, String>> wordings) {
        SheetLine usual = line;
        for (Map.Entry<Pattern, String> words : wordings) {
            Matcher found = words.getKey().matcher(usual.text());
            if (found.find()) {
                String told = words.getValue().startsWith("$1")
                        ? found.group(1) + words.getValue().substring(2)
                        : words.getValue();
                usual = usual.with(found.start(), found.end(), told);
            }
        }
        return usual;
    }

    /** Where a wall is told of: "bars 1-8" are 24 counts of a waltz. */
    private static SheetLine bars(SheetLine line, int beats) {
        SheetLine counted = line;
        Matcher bars = BARS.matcher(counted.text());
        if (!bars.find() || !line.namesWall()) {
            return line;
        }
        int from = 0;
        while (bars.find(from)) {
            int first = Integer.parseInt(bars.group(1));
            int last = bars.group(2) == null ? first : Integer.parseInt(bars.group(2));
            boolean behind = counted.text()
                    .substring(0, bars.start())
                    .matches("(?i).*\\b(?:after|to|until|behind|end of)\\s+(?:the\\s+)?");
            int begin = (first - 1) * beats + 1;
            String counts = bars.group(2) != null
                    ? "counts " + begin + "-" + last * beats
                    : "count " + (behind ? last * beats : begin);
            counted = counted.with(bars.start(), bars.end(), counts);
            from = bars.start() + counts.length();
            bars = BARS.matcher(counted.text());
        }
        return counted;
    }
}
