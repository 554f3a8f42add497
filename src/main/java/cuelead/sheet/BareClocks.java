package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Walls told by their hour alone: "facing 6", "nine o'clock", "look at 3", and, where a sheet does so line by line,
 * "(9)" and a last column of 12, 3, 6 and 9. They become "6:00".
 */
final class BareClocks {
    private static final Map<String, String> HOURS = Map.of("twelve", "12", "three", "3", "six", "6", "nine", "9");
    private static final String HOUR = "(12|3|6|9|twelve|three|six|nine)";
    private static final List<Pattern> TOLD = List.of(
            Pattern.compile(HOUR + "\\s*o'?\\s?clock\\b", Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "\\b(?:fac(?:e|es|ing|ed)|look(?:s|ing)?(?: now)? (?:at|to|towards?)|turned to|end(?:s|ing)? (?:up )?at|now at|wall at)"
                            + "\\s+(?:to\\s+|towards?\\s+|the\\s+|now\\s+)*" + HOUR
                            + "(?![\\d:./-]|\\s*(?:counts?|beats?|cts?|walls?\\s|times?|steps?|o'?\\s?clock))\\b",
                    Pattern.CASE_INSENSITIVE),
            Pattern.compile("(?<![\\w@])@\\s*" + HOUR + "(?![\\d:./-])", Pattern.CASE_INSENSITIVE));
    private static final Pattern LAST =
            Pattern.compile("(?:(?:\\s\\s|\\t)\\s*|[(\\[]\\s*)(12|3|6|9)\\s*[)\\]]?\\s*[.,]?\\s*$");
    /** The last column of a table whose spaces are lost. */
    private static final Pattern LAST_WORD = Pattern.compile("\\s(12|3|6|9)\\s*$");

    private static final int FEWEST_OF_ALL = 8;
    /** Lines that end so, as it is no accident. */
    private static final int FEWEST = 2;

    private BareClocks() {}

    /** The same lines, hours as clock times. */
    static List<SheetLine> told(List<SheetLine> lines) {
        List<SheetLine> told = lines.stream().map(BareClocks::told).collect(Collectors.toCollection(ArrayList::new));
        if (areLast(told)) {
            told.replaceAll(line -> isCounted(line) ? hour(line, LAST) : isOfWall(line) ? hour(line, BRACKETED) : line);
        } else if (areLastOfAll(told)) {
            told.replaceAll(line -> isCounted(line) ? hour(line, LAST_WORD) : line);
        }
        return told;
    }

    /** Whether most lines with counts end with an hour, on several walls, and no other with a number. */
    private static boolean areLastOfAll(List<SheetLine> lines) {
        List<String> counted = lines.stream()
                .filter(BareClocks::isCounted)
                .map(SheetLine::text)
                .filter(text -> DanceLine.isDanced(text))
                .toList();
        List<String> ending =
                counted.stream().filter(text -> LAST_WORD.matcher(text).find()).toList();
        boolean other = counted.stream()
                .filter(text -> !ending.contains(text))
                .anyMatch(text -> text.stripTrailing().matches(".*\\d"));
        long hours = ending.stream()
                .map(text -> text.strip().replaceAll("^.*\\s", ""))
                .distinct()
                .count();
        return ending.size() >= FEWEST_OF_ALL && ending.size() * 3 >= counted.size() * 2 && hours > 1 && !other;
    }

    private static SheetLine told(SheetLine line) {
        SheetLine told = line;
        for (Pattern place : TOLD) {
            told = hour(told, place);
        }
        return told;
    }

    private static SheetLine hour(SheetLine line, Pattern place) {
        SheetLine told = line;
        Matcher found = place.matcher(told.text());
        int from = 0;
        while (from <= told.text().length() && found.find(from)) {
            String hour = found.group(1).toLowerCase(Locale.ROOT);
            String clock = HOURS.getOrDefault(hour, hour) + ":00";
            int end = place == TOLD.get(0) ? found.end() : found.end(1);
            told = told.with(found.start(1), end, clock);
            from = found.start(1) + clock.length();
            found = place.matcher(told.text());
        }
        return told;
    }

    /** Whether several lines end with an hour, on more than one wall or behind a turn, and none with another number. */
    private static boolean areLast(List<SheetLine> lines) {
        List<SheetLine> ending = lines.stream()
                .filter(BareClocks::isCounted)
                .filter(line -> LAST.matcher(line.text()).find())
                .toList();
        Set<String> hours = ending.stream()
                .map(line -> LAST.matcher(line.text())
                        .results()
                        .findFirst()
                        .orElseThrow()
                        .group(1))
                .collect(Collectors.toSet());
        boolean turned = ending.stream().anyMatch(line -> DanceLine.mayTurn(line.text()));
        boolean other = lines.stream().filter(BareClocks::isCounted).anyMatch(BareClocks::endsOtherwise);
        return ending.size() >= FEWEST && hours.size() > 1 && turned && !other;
    }

    private static final Pattern OTHER =
            Pattern.compile("(?:(?:\\s\\s|\\t)\\s*|[(\\[]\\s*)(\\d{1,2})\\s*[)\\]]?\\s*[.,]?\\s*$");

    private static boolean endsOtherwise(SheetLine line) {
        return OTHER.matcher(line.text()).find() && !LAST.matcher(line.text()).find();
    }

    /** "TAG: after the 4th wall [12]", on a sheet that tells its walls so. */
    private static boolean isOfWall(SheetLine line) {
        return !line.isBlank() && line.namesWall();
    }

    private static final Pattern BRACKETED = Pattern.compile("[(\\[]\\s*(12|3|6|9)\\s*[)\\]]");

    /** Counts before the steps: a number behind them is none of them. */
    private static boolean isCounted(SheetLine line) {
        return CountGroup.read(line.text()).isPresent() || line.text().matches("\\s*(?:&|and|a)\\s.*");
    }
}
