package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Counts listed as a sentence lists them: "Counts 1 and 2, step ...", "On 5, 6 and 7 walk", "... for 3 and 4". As
 * spoken, "and" may just as well be the half count between two; whichever fills its counts is meant.
 */
final class ListedCounts {
    private static final String AND = "(?:\\s*,)?\\s*(?:and|und|et|y|then|plus|&)\\s*";
    private static final String RUN = "(\\d{1,2}(?:\\s*,\\s*\\d{1,2})*(?:" + AND + "\\d{1,2})+)(?![\\d/]|:\\d)";
    private static final String UNIT = "(?:on|for|during|over|counts?|cts?\\.?|beats?)";
    private static final Pattern HEAD = Pattern.compile(
            "^\\W*(?:(?:and|then|next|now)\\b[ ,]*)?(?:the\\s+)?(?:" + UNIT + "\\b\\s*)*" + RUN,
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WITHIN =
            Pattern.compile("(?:[(\\[]\\s*|\\b)(?:" + UNIT + "\\s+)+" + RUN, Pattern.CASE_INSENSITIVE);
    private static final Pattern BRACKETED =
            Pattern.compile("[(\\[]\\s*" + RUN + "\\s*[)\\]]", Pattern.CASE_INSENSITIVE);
    private static final Pattern SIGN = Pattern.compile(AND, Pattern.CASE_INSENSITIVE);
    /** A sign that stands for a half count wherever it is not said otherwise. */
    private static final Pattern HALF = Pattern.compile("^\\d+\\s*&\\s*\\d+$");
    /** Lines that are written so, as it is no accident. */
    private static final int FEWEST = 3;

    private ListedCounts() {}

    /** The same lines, their counts joined by commas or by the sign of the half count. */
    static List<SheetLine> joined(List<SheetLine> lines) {
        boolean signs = listsWithSigns(lines);
        List<SheetLine> joined = new ArrayList<>();
        for (SheetLine line : lines) {
            SheetLine usual = line;
            for (Pattern place : List.of(HEAD, WITHIN, BRACKETED)) {
                usual = joined(usual, place, signs);
            }
            joined.add(usual);
        }
        return joined;
    }

    private static SheetLine joined(SheetLine line, Pattern place, boolean signs) {
        SheetLine found = line;
        Matcher run = place.matcher(line.text());
        int from = 0;
        while (from <= found.text().length() && run.find(from)) {
            String counts = run.group(1);
            from = run.end(1);
            boolean open = signs || !HALF.matcher(counts).find();
            if (open && isRising(counts)) {
                String usual = usual(found, run, counts);
                found = found.with(run.start(1), run.end(1), usual);
                from = run.start(1) + usual.length();
                run = place.matcher(found.text());
            }
        }
        return found;
    }

    private static String usual(SheetLine line, Matcher run, String counts) {
        String list = SIGN.matcher(counts).replaceAll(",");
        String half = SIGN.matcher(counts).replaceAll("&");
        List<String> steps = steps(line.text(), run);
        LineFit fit = line.fit();
        int commas = cost(list, steps, fit);
        int halves = cost(half, steps, fit);
        boolean each = commas < LineFit.IMPOSSIBLE && actions(list, steps, fit) == list.split(",", -1).length;
        boolean told = TOLD.matcher(run.group()).find() && (commas < STRAINED || commas == halves);
        return each || told || commas < halves ? list : half;
    }

    /** "Counts 1 and 2", "5, 6 and 7": a list, where the steps do not tell. */
    private static final Pattern TOLD = Pattern.compile("\\b(?:counts|cts|beats|for)\\b|,", Pattern.CASE_INSENSITIVE);

    /** Above this a touch or a kick would be held over several counts. */
    private static final int STRAINED = 10;

    private static int actions(String counts, List<String> steps, LineFit fit) {
        return steps.stream()
                .filter(each -> fit.fits(counts + " " + each))
                .mapToInt(each -> fit.phrases(each, 0).size())
                .max()
                .orElse(0);
    }

    private static int cost(String counts, List<String> steps, LineFit fit) {
        return steps.stream()
                .mapToInt(each -> fit.cost(counts + " " + each))
                .min()
                .orElse(LineFit.IMPOSSIBLE);
    }

    /**
     * What stands behind these counts up to the next ones; unless the line begins with its counts, also what stands
     * before them from the last ones on.
     */
    private static List<String> steps(String text, Matcher run) {
        int from = 0;
        int to = text.length();
        Matcher other = OTHER.matcher(text);
        while (other.find()) {
            from = other.end() <= run.start() ? other.end() : from;
            to = other.start() >= run.end(1) ? Math.min(to, other.start()) : to;
        }
        String behind = bare(text.substring(run.end(1), to));
        boolean headed = CountGroup.read(text).isPresent();
        return headed ? List.of(behind) : List.of(behind, bare(text.substring(from, run.start())));
    }

    private static String bare(String steps) {
        return steps.replaceAll("^[\\s:.,)\\]=-]+|[\\s(\\[]+$", "");
    }

    private static final Pattern OTHER =
            Pattern.compile("(?:\\b" + UNIT + "\\s+|[(\\[]\\s*)+\\d{1,2}[\\d ,&-]*[)\\]]?", Pattern.CASE_INSENSITIVE);

    private static boolean isRising(String counts) {
        String[] numbers = counts.split("\\D+", -1);
        for (int i = 1; i < numbers.length; i++) {
            if (Integer.parseInt(numbers[i]) != Integer.parseInt(numbers[i - 1]) + 1) {
                return false;
            }
        }
        return true;
    }

    /** "Counts 5 & 6: step, brush": a sheet that lists with the sign, as most of its lines show. */
    private static boolean listsWithSigns(List<SheetLine> lines) {
        int list = 0;
        int half = 0;
        for (SheetLine line : lines) {
            Matcher run = HEAD.matcher(line.text());
            if (run.find() && HALF.matcher(run.group(1)).find() && isRising(run.group(1))) {
                String listed = SIGN.matcher(run.group(1)).replaceAll(",");
                List<String> steps = steps(line.text(), run);
                boolean halves = cost(run.group(1), steps, line.fit()) < LineFit.IMPOSSIBLE;
                boolean lists = cost(listed, steps, line.fit()) < LineFit.IMPOSSIBLE;
                half += halves ? 1 : 0;
                list += lists && !halves ? 1 : 0;
            }
        }
        return list >= FEWEST && list > 2 * half;
    }
}
