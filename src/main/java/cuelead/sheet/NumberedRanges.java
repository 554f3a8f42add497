package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Headings of a number or a letter and the range of their section, as a table has them: "1 | 1-8 | VINES", "2. 9-16 Rocks",
 * "C 17 - 24 - JAZZ BOX". The number is no count, and the letter no part: the ranges run on. They become "[1-8] VINES".
 */
final class NumberedRanges {
    private static final Pattern HEAD = Pattern.compile(
            "^[\\s|*#]*(?:(?:section|sec|sect|set|no|nr|number)\\b\\.?\\s*)?[#(]?(\\d{1,2}|[A-Z])\\s*[.):\\]|/-]*"
                    + "(?:\\s*[|:-]\\s*|\\s+)\\(?(?:counts?|cts?\\.?|beats?)?\\s*"
                    + "(\\d{1,3})\\s*(?:-|to|thru|through)\\s*(\\d{1,3})\\b\\)?\\s*[.:|-]*\\s*(?=[^\\d\\s&,]|$)",
            Pattern.CASE_INSENSITIVE);
    private static final int FEWEST = 2;
    /** Counts; fewer are those of a line of steps. */
    private static final int SHORTEST = 6;

    private NumberedRanges() {}

    /** The same lines, where at least two of them are such headings. */
    static List<SheetLine> bracketed(List<SheetLine> lines) {
        List<SheetLine> bracketed = new ArrayList<>();
        int number = 0;
        int last = 0;
        for (int i = 0; i < lines.size(); i++) {
            Optional<Matcher> head = head(lines, i, number + 1, last);
            if (head.isPresent()) {
                Matcher found = head.get();
                number++;
                last = Integer.parseInt(found.group(3));
                String range = "[" + found.group(2) + "-" + found.group(3) + "] ";
                bracketed.add(lines.get(i).with(0, found.end(), range));
            } else {
                bracketed.add(lines.get(i));
            }
        }
        return number < FEWEST ? lines : bracketed;
    }

    /** With the number that comes next, and a range behind the one before; its counts stand below. */
    private static Optional<Matcher> head(List<SheetLine> lines, int i, int number, int last) {
        Matcher head = HEAD.matcher(lines.get(i).text());
        if (!head.find() || number(head.group(1)) != number) {
            return Optional.empty();
        }
        int first = Integer.parseInt(head.group(2));
        int end = Integer.parseInt(head.group(3));
        boolean runsOn = first == last + 1;
        boolean anew = first == 1 && Scanner.isDigit(head.group(1).charAt(0));
        boolean whole = end - first + 1 >= SHORTEST;
        return Optional.of(head).filter(found -> whole && (runsOn || anew) && countsBelow(lines, i, first, end));
    }

    private static int number(String label) {
        char c = Character.toLowerCase(label.charAt(0));
        return Scanner.isDigit(c) ? Integer.parseInt(label) : c - 'a' + 1;
    }

    private static boolean countsBelow(List<SheetLine> lines, int i, int first, int end) {
        return lines.stream()
                .skip(i + 1L)
                .filter(line -> !line.isBlank())
                .limit(FEWEST)
                .flatMap(line -> line.counted(0).stream())
                .map(counted -> counted.group().counts().get(0).number())
                .anyMatch(count -> count <= end - first + 1 || (count >= first && count <= end));
    }
}
