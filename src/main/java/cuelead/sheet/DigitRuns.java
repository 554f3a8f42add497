package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts without a mark between them: "123 Basic forward", "1&2 34 5&6 78", "Rock, recover (12)". */
final class DigitRuns implements Manner {
    private static final String END = "(?![\\d/:.]*\\d|\\w)";
    private static final Pattern HEAD =
            Pattern.compile("^\\W*(?:(?:counts?|cts?|beats?)\\b[.: ]*)?([\\d&a ,+-]*\\d)" + END);
    private static final Pattern BEHIND =
            Pattern.compile("(?:[(\\[]|\\s\\s|\\t|[-:] )([\\d&a ,+-]*\\d)\\s*(?=[)\\]]|$)");
    private static final Pattern RUN = Pattern.compile("(?<!\\d)\\d{2,8}(?!\\d)");

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        return lines.stream().map(DigitRuns::usual).toList();
    }

    private static SheetLine usual(SheetLine line) {
        SheetLine head = parted(line, HEAD);
        return head.equals(line) ? parted(line, BEHIND) : head;
    }

    private static SheetLine parted(SheetLine line, Pattern place) {
        Matcher counts = place.matcher(line.text());
        List<int[]> runs = new ArrayList<>();
        while (counts.find()) {
            Matcher run = RUN.matcher(line.text()).region(counts.start(1), counts.end(1));
            while (run.find()) {
                runs.add(0, new int[] {run.start(), run.end()});
            }
        }
        SheetLine parted = line;
        for (int[] run : runs) {
            String digits = line.text().substring(run[0], run[1]);
            parted = isRising(digits) ? parted.with(run[0], run[1], counts(digits)) : parted;
        }
        return parted;
    }

    private static boolean isRising(String digits) {
        for (int i = 1; i < digits.length(); i++) {
            if (digits.charAt(i) != digits.charAt(i - 1) + 1) {
                return false;
            }
        }
        return digits.charAt(0) > '0';
    }

    private static String counts(String digits) {
        return digits.charAt(0) + "-" + digits.charAt(digits.length() - 1);
    }
}
