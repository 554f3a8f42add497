package cuelead.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Counts joined by signs that mean something else elsewhere: "1.2.3.4 Step", "5/6 Rock", "1 + 2 Walk", "(7.8)". */
final class JoinedCounts {
    private static final String RUN = "(\\d{1,2}(?:\\s*[./+]\\s*\\d{1,2})+)";
    private static final Pattern HEAD =
            Pattern.compile("^\\W*(?:(?:counts?|cts?|beats?)\\b[.: ]*)?" + RUN + "(?![\\d/])");
    private static final Pattern BEHIND =
            Pattern.compile("(?:[(\\[]|\\s\\s|\\t|[-:,] )" + RUN + "\\s*(?=[)\\]]\\W*$|$)");

    /** "5/6", "1.2.3": no turn, and no clock time. */
    private static final Pattern NO_TURN =
            Pattern.compile("(?<![\\d.])(5\\s*[./+]\\s*6|7\\s*[./+]\\s*8|1\\s*[./+]\\s*2\\s*[./+]\\s*3)(?!\\d)");
    /** Lines that are written so, as it is no accident. */
    private static final int FEWEST = 3;

    private static final Pattern AND = Pattern.compile("\\d\\s*&\\s*\\d");

    /** Counts that are joined so by lines that they fit: others that are joined alike are counts, whatever is missing. */
    private final Set<String> known = new HashSet<>();

    /** Whether "and" has a sign of its own, so that "+" is none. */
    private final boolean andIsApart;

    private JoinedCounts(List<SheetLine> lines) {
        andIsApart = lines.stream().anyMatch(line -> AND.matcher(line.text()).find());
    }

    /** The same lines, where several are written so with ranges for their signs. */
    static List<SheetLine> where(List<SheetLine> lines) {
        JoinedCounts counts = new JoinedCounts(lines);
        List<SheetLine> fitting = lines.stream().map(counts::usual).toList();
        List<SheetLine> usual = counts.known.isEmpty()
                ? fitting
                : IntStream.range(0, lines.size())
                        .mapToObj(
                                i -> fitting.get(i).equals(lines.get(i)) ? counts.usual(lines.get(i)) : fitting.get(i))
                        .toList();
        long joined = IntStream.range(0, lines.size())
                .filter(i -> !usual.get(i).equals(lines.get(i)))
                .count();
        boolean noTurns = lines.stream()
                .map(SheetLine::text)
                .anyMatch(text -> NO_TURN.matcher(text).find());
        return joined < FEWEST || !noTurns ? lines : usual;
    }

    private SheetLine usual(SheetLine line) {
        SheetLine head = ranged(line, HEAD);
        return head.equals(line) ? ranged(line, BEHIND) : head;
    }

    /** Only where the steps then fill their counts better, so that "1/2 turn" and "1+2" with three steps stay. */
    private SheetLine ranged(SheetLine line, Pattern place) {
        Matcher run = place.matcher(line.text());
        if (!run.find()) {
            return line;
        }
        String[] numbers = run.group(1).split("\\D+", -1);
        for (int i = 1; i < numbers.length; i++) {
            if (Integer.parseInt(numbers[i]) != Integer.parseInt(numbers[i - 1]) + 1) {
                return line;
            }
        }
        SheetLine ranged = line.with(run.start(1), run.end(1), numbers[0] + "-" + numbers[numbers.length - 1]);
        int cost = cost(ranged);
        boolean fits = cost < LineFit.IMPOSSIBLE && (andIsApart || cost <= cost(line));
        String joined = run.group(1);
        if (fits && joined.indexOf('+') < 0) {
            known.add(joined);
        }
        return fits || known.contains(joined) ? ranged : line;
    }

    private static int cost(SheetLine line) {
        List<CountPlaces.Counted> counted = line.counted(0);
        return counted.size() != 1
                ? LineFit.IMPOSSIBLE
                : line.fit()
                        .cost(LaidRow.line(Row.of(line, 0, false), counted.get(0))
                                .text());
    }
}
