package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts in words: "one, two  Rock forward", "three &amp; four", "Counts five to eight:", "touch (one and two)". */
final class SpokenCounts implements Manner {
    private static final int HIGHEST_SPOKEN = 12;
    private static final List<String> NUMBERS = NumberWords.fromOneTo(HIGHEST_SPOKEN);
    private static final String NUMBER = "(?:" + String.join("|", NUMBERS) + ")";
    /** "3and4", "1 and 2" */
    private static final Pattern AND_BETWEEN = Pattern.compile(
            "^(\\W*\\d+(?:(?:[-, ]+| and )\\d+)*)((?! and )\\s*(?:and|und|et|y|n)\\s*)(?=(\\d+)\\b)",
            Pattern.CASE_INSENSITIVE);

    private static final int SHORTEST_SPEAKER = 4;
    private static final String JOINT = "\\s*(?:,|&|\\+|-|\\band\\b|\\bto\\b|\\bthrough\\b|\\bthru\\b|\\s)\\s*";
    private static final String AND = "(?:(?:&|\\+|and\\b|a\\b)\\s*)";
    private static final String MANY = NUMBER + "(?:" + JOINT + "(?:(?:&|and)\\s*)?" + NUMBER + ")+(?:\\s*&)?";
    private static final String RUN = AND + "?(?:" + MANY + "|" + NUMBER + ")\\b";
    /** At the head of a line one word alone is parted from what follows. */
    private static final Pattern HEAD = Pattern.compile(
            "^\\W*(?:" + CountOpeners.OPENER + ")?(" + AND + "?" + MANY + "\\b|" + RUN
                    + "(?=\\s\\s|\\t|\\s*[:.)\\]=]|\\s+-\\s)|(?<=(?:on|count|beat) )" + NUMBER + "\\b)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern BRACKETED = Pattern.compile(
            "[(\\[](?:(?:on |beats? |counts? |cts?\\.? ))?(" + RUN + ")[)\\]]", Pattern.CASE_INSENSITIVE);
    private static final Pattern BEHIND = Pattern.compile(
            "(?:\\s\\s|\\t|[-:,;] |\\b(?:on|counts?|beats?|for) )(" + RUN + ")\\s*\\.?$", Pattern.CASE_INSENSITIVE);
    /** "Step right for one, close left to it for two" */
    private static final Pattern WITHIN = Pattern.compile(
            "\\b(?:on|for|counts?|beats?) (" + RUN + ")(?=\\s*(?:[,.;:)]|$|and\\b(?!\\s" + NUMBER + ")|then\\b))",
            Pattern.CASE_INSENSITIVE);
    /** "... touch L. On counts five and six step ..." */
    private static final Pattern MANY_WITHIN = Pattern.compile(
            "(?:\\b(?:counts|beats) |[.;] " + CountOpeners.OPENER + ")(" + MANY + ")\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern WORD =
            Pattern.compile("\\b(?:" + NUMBER + "|and|to|through|thru)\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern ONE = Pattern.compile("\\b" + NUMBER + "\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern ALONE =
            Pattern.compile("^\\W*(" + NUMBER + ")(?!" + JOINT + NUMBER + "\\b)(?=\\s\\w)", Pattern.CASE_INSENSITIVE);

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        return ListedCounts.joined(CountOpeners.left(inFigures(lines)));
    }

    private static List<SheetLine> inFigures(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        int last = 0;
        for (SheetLine line : lines) {
            SheetLine joined = joined(line);
            SheetLine found = ONE.matcher(joined.text()).find()
                    ? inFigures(inFigures(next(joined, last), HEAD, BEHIND), BRACKETED, MANY_WITHIN, WITHIN)
                    : joined;
            usual.add(found);
            last = found.equals(line) ? last : last(found);
        }
        return usual;
    }

    /** Whether so many lines are counted in words that it is the manner of the whole sheet. */
    boolean isPlain(List<SheetLine> lines) {
        List<SheetLine> usual = inFigures(lines);
        int changed = 0;
        int counted = 0;
        for (int i = 0; i < lines.size(); i++) {
            boolean spoken = !usual.get(i).equals(lines.get(i));
            changed += spoken ? 1 : 0;
            counted += !spoken && CountGroup.read(lines.get(i).text()).isPresent() ? 1 : 0;
        }
        return changed >= SHORTEST_SPEAKER && changed > counted;
    }

    private static SheetLine joined(SheetLine line) {
        SheetLine joined = line;
        Matcher and = AND_BETWEEN.matcher(joined.text());
        while (and.find()) {
            joined = joined.with(and.start(2), and.end(2), " and ");
            and = AND_BETWEEN.matcher(joined.text());
        }
        return joined;
    }

    private static SheetLine inFigures(SheetLine line, Pattern... places) {
        SheetLine found = line;
        for (Pattern place : places) {
            Matcher counts = place.matcher(found.text());
            int from = 0;
            while (counts.find(from)) {
                String run = counts.group(1);
                String figures = isRising(run) ? inFigures(run) : run;
                found = found.with(counts.start(1), counts.end(1), figures);
                from = counts.start(1) + figures.length();
                counts = place.matcher(found.text());
            }
        }
        return found;
    }

    /** The next number alone needs no mark behind it: "one, two Rock forward", "three Hold". */
    private static SheetLine next(SheetLine line, int last) {
        Matcher word = ALONE.matcher(line.text());
        boolean next = word.find() && NUMBERS.indexOf(word.group(1).toLowerCase(Locale.ROOT)) == last;
        return next && last > 0 ? line.with(word.start(1), word.end(1), String.valueOf(last + 1)) : line;
    }

    private static int last(SheetLine line) {
        return line.counted(0).stream()
                .flatMap(each -> each.group().counts().stream())
                .mapToInt(Count::number)
                .max()
                .orElse(0);
    }

    /** "two, two" and "one, three" are no counts; "one to four" is. */
    private static boolean isRising(String run) {
        Matcher words = WORD.matcher(run);
        int last = 0;
        boolean range = run.indexOf('-') >= 0;
        while (words.find()) {
            int number = NUMBERS.indexOf(words.group().toLowerCase(Locale.ROOT)) + 1;
            boolean next = last == 0 || number == last + 1 || (range && number > last);
            if (number > 0 && !next) {
                return false;
            }
            range = number == 0 ? !words.group().equalsIgnoreCase("and") : run.indexOf('-') >= 0;
            last = number > 0 ? number : last;
        }
        return last > 0;
    }

    private static String inFigures(String run) {
        return WORD.matcher(run)
                .replaceAll(word -> {
                    int number = NUMBERS.indexOf(word.group().toLowerCase(Locale.ROOT)) + 1;
                    boolean and = word.group().equalsIgnoreCase("and");
                    return number > 0 ? String.valueOf(number) : and ? "and" : "-";
                })
                .replaceAll("(?<=\\d)\\s+(?=\\d)", ",");
    }
}
