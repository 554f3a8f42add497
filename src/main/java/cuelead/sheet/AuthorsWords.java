package cuelead.sheet;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What an author wrote where a line was read, which the layout may have put together from several places. */
final class AuthorsWords {
    /** A call in quotes, and what parts words from the next ones. */
    private static final String PARTING = "[\\s,;.&+-]|\"[^\"]*\"|\\b(?:and|then)\\b";

    private static final Pattern TAIL = Pattern.compile("(?:" + PARTING + ")+$");
    /** The same, and the count of an action in brackets. */
    private static final Pattern TAIL_OF_ACTION = Pattern.compile("(?:" + PARTING + "|\\((?:\\d|[&a,\\s-])+\\))+$");

    private static final Pattern HEAD = Pattern.compile("^[\\s,;.:-]+");

    private final List<SheetLine> sheet;
    private final List<LaidLine> read;

    AuthorsWords(List<SheetLine> sheet, List<LaidLine> read) {
        this.sheet = sheet;
        this.read = read;
    }

    /** Whether a line was read, and not put together on trial. */
    boolean knows(int line) {
        return line >= 1 && line <= read.size();
    }

    /** The words of a span of a line that was read, without the mark that they may have. */
    String words(Problems.Span span) {
        LaidLine line = read.get(span.line() - 1);
        int counts = span.extent() == Problems.Extent.LINE
                ? CountGroup.read(line.text()).map(CountGroup::end).orElse(0)
                : 0;
        int to = Math.min(span.to() - 1, line.text().length());
        Map<Integer, int[]> places = new TreeMap<>();
        for (int column = Math.max(span.from(), counts + 1); column <= to; column++) {
            if (!Scanner.isSpace(line.text().charAt(column - 1))) {
                Origins.Place place = line.origin(column);
                int[] ends = places.computeIfAbsent(place.line(), ignored -> new int[] {place.column(), 0});
                ends[0] = Math.min(ends[0], place.column());
                ends[1] = Math.max(ends[1], place.column());
            }
        }
        int first = places.isEmpty() ? 0 : places.keySet().iterator().next();
        String words = places.entrySet().stream()
                .filter(place -> place.getKey() == first || goesOn(place.getKey()))
                .map(place -> words(sheet.get(place.getKey() - 1).text(), place.getValue()[0], place.getValue()[1]))
                .collect(Collectors.joining(" "));
        String plain = HEAD.matcher(words).replaceFirst("");
        Pattern tail = span.extent() == Problems.Extent.ACTION ? TAIL_OF_ACTION : TAIL;
        return NotUnderstood.begins(plain)
                ? NotUnderstood.unmarked(plain)
                : NotUnderstood.inside(tail.matcher(plain).replaceFirst(""));
    }

    /** A further line of the same words, not a remark or an easy option that was put behind them. */
    private boolean goesOn(int line) {
        return LineKind.of(sheet.get(line - 1)) != LineKind.NOTE;
    }

    /** Between two 1-based columns; words and brackets that begin before or end behind them are taken whole. */
    private static String words(String text, int first, int last) {
        int from = Math.min(first, text.length()) - 1;
        while (from > 0 && isOfWord(text.charAt(from)) && isOfWord(text.charAt(from - 1))) {
            from--;
        }
        int to = Math.min(last, text.length());
        while (to < text.length() && isOfWord(text.charAt(to - 1)) && isOfWord(text.charAt(to))) {
            to++;
        }
        String words = text.substring(Math.max(0, from), to);
        int mark = words.lastIndexOf('[');
        int close = mark < 0 ? -1 : text.indexOf(']', Math.max(0, from) + mark);
        return close < to ? words : text.substring(Math.max(0, from), close + 1);
    }

    private static boolean isOfWord(char c) {
        return Character.isLetterOrDigit(c) || c == '/';
    }
}
