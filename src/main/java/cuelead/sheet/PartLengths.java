package cuelead.sheet;

import cuelead.dance.Claims.PartLength;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The lengths that a phrased sheet states of its parts: "Part A = 32 counts, Part B = 16", "A: 32c", "PART B (16 counts)". */
final class PartLengths {
    private static final String UNIT = "(?:counts?|cts?|c|beats?)";
    private static final Pattern LENGTH = Pattern.compile(
            "(?:^|[\\s,;(/|])(?:(part|section)\\s+)?([A-F])\\b(?:\\s*part)?\\s*(?:[=:(\\[-]|\\bis\\b|\\bhas\\b|\\bof\\b)*\\s*"
                    + "(\\d{1,3})(?![\\d:./-])\\s*(" + UNIT + "\\b)?",
            Pattern.CASE_INSENSITIVE);
    private static final int SHORTEST = 8;

    private PartLengths() {}

    /** One a part, as it is first stated. */
    static List<PartLength> in(List<SheetLine> lines) {
        Map<String, PartLength> lengths = new LinkedHashMap<>();
        for (SheetLine line : lines) {
            in(line).forEach(found -> lengths.putIfAbsent(found.part(), found));
        }
        return List.copyOf(lengths.values());
    }

    /** Without the word "part" or a unit, several on one line tell each other: "A 32, B 16". */
    private static List<PartLength> in(SheetLine line) {
        List<PartLength> found = new ArrayList<>();
        boolean told = false;
        Matcher length = LENGTH.matcher(line.text());
        while (length.find()) {
            if (isArticle(length)) {
                continue;
            }
            int counts = Integer.parseInt(length.group(3));
            told |= length.group(1) != null || length.group(4) != null;
            if (counts >= SHORTEST && counts % 2 == 0) {
                found.add(new PartLength(length.group(2).toUpperCase(Locale.ROOT), counts, line.number()));
            }
        }
        found.removeIf(each -> SequenceReader.isSequence(line) && isShortThere(each, found, line));
        return told || found.size() > 1 ? found : List.of();
    }

    /** "A 32 count dance" */
    private static boolean isArticle(Matcher length) {
        return ARTICLE.matcher(length.group().strip()).matches();
    }

    private static final Pattern ARTICLE = Pattern.compile("a\\s+\\d+\\s*" + UNIT + "|A\\s+\\d+\\s*(?:count|beat|ct)");

    /** The line with spaces in the place of the lengths of parts: "Phrased, Part A 32 counts" tells no length of the dance. */
    static SheetLine without(SheetLine line) {
        SheetLine rest = line;
        Matcher length = LENGTH.matcher(line.text());
        while (!in(line).isEmpty() && length.find()) {
            rest = isArticle(length)
                    ? rest
                    : rest.with(length.start(), length.end(), " ".repeat(length.end() - length.start()));
        }
        return rest;
    }

    /** "Sequence: A, A (8 counts), B": the number is that of a short form. */
    private static boolean isShortThere(PartLength part, List<PartLength> found, SheetLine line) {
        long same = found.stream().filter(part::equals).count();
        return Pattern.compile("(?<![A-Za-z])" + part.part() + "(?![A-Za-z])", Pattern.CASE_INSENSITIVE)
                        .matcher(line.text())
                        .results()
                        .count()
                > same;
    }
}
