package cuelead.sheet;

import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Two counts joined by the word "and": "Counts 17 and 18: step, touch" tells two beats, "3 and 4 shuffle" a beat, the
 * "and" and the next beat. Which is meant is told by the steps.
 */
final class AndCounts {
    /** Above this an action would be held over counts that it does not need. */
    private static final int STRAINED = 10;

    private static final int HIGHEST_SPOKEN = 99;
    private static final String SPOKEN = IntStream.rangeClosed(1, HIGHEST_SPOKEN)
            .mapToObj(NumberWords::cardinal)
            .map(words -> words.replace("-", "[- ]"))
            .sorted((one, other) -> other.length() - one.length())
            .collect(Collectors.joining("|"));
    private static final String NUMBER = "(?:\\d{1,2}|" + SPOKEN + ")";
    /** "Counts 1, 2 and 3", "(beats five and six)" */
    private static final Pattern PLURAL = pattern("\\b(?:counts|cts|beats)\\b[.: ]*(?:" + NUMBER + "\\s*,\\s*)*("
            + NUMBER + ")(\\s*,?\\s+and\\s+)(" + NUMBER + ")\\b");
    /** "3 and 4" */
    private static final Pattern BARE = pattern("^\\W*(\\d{1,2})(\\s+and\\s+)(\\d{1,2})\\b");

    private AndCounts() {}

    private static Pattern pattern(String text) {
        return Pattern.compile(text, Pattern.CASE_INSENSITIVE);
    }

    /** The same lines, such counts as ranges or with the sign of the "and". */
    static List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        boolean beats = bareMeansBeats(lines);
        for (SheetLine line : lines) {
            SheetLine beat = joined(line, PLURAL, "-");
            SheetLine half = joined(line, PLURAL, "&");
            int cost = cost(beat);
            boolean split = cost >= STRAINED && cost(half) < cost;
            SheetLine plural = split ? half : beat;
            usual.add(plural.equals(line) ? joined(line, BARE, beats ? "-" : "&") : plural);
        }
        return usual;
    }

    /** One such line may lack a step; where most have but two it is the author's way of writing. */
    private static boolean bareMeansBeats(List<SheetLine> lines) {
        long beats = lines.stream().filter(line -> fits(line, "-")).count();
        long halves = lines.stream().filter(line -> fits(line, "&")).count();
        return beats > 1 && beats > halves;
    }

    private static boolean fits(SheetLine line, String joint) {
        SheetLine joined = joined(line, BARE, joint);
        return !joined.equals(line) && cost(joined) < LineFit.IMPOSSIBLE;
    }

    private static SheetLine joined(SheetLine line, Pattern pattern, String joint) {
        Matcher and = pattern.matcher(line.text());
        if (!and.find() || value(and.group(3)) != value(and.group(1)) + 1) {
            return line;
        }
        String counts = value(and.group(1)) + joint + value(and.group(3));
        return line.with(and.start(1), and.end(3), counts);
    }

    private static int value(String number) {
        String plain = number.toLowerCase(Locale.ROOT);
        return Scanner.isDigit(plain.charAt(0))
                ? Integer.parseInt(plain)
                : IntStream.rangeClosed(1, HIGHEST_SPOKEN)
                        .filter(each ->
                                NumberWords.cardinal(each).replace('-', ' ').equals(plain.replace('-', ' ')))
                        .findFirst()
                        .orElse(0);
    }

    private static int cost(SheetLine line) {
        List<CountPlaces.Counted> counted = CountPlaces.of(line.text(), 0);
        return counted.size() != 1
                ? LineFit.IMPOSSIBLE
                : LineFit.cost(
                        LaidRow.line(Row.of(line, 0, false), counted.get(0)).text());
    }
}
