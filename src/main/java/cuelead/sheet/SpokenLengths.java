package cuelead.sheet;

import cuelead.english.NumberWords;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Lengths as they are said: "a vine to the right, that's four counts, then a vine to the left, another four". */
final class SpokenLengths {
    private static final int MOST = 16;
    private static final List<String> NUMBERS = NumberWords.fromOneTo(MOST);
    private static final String NUMBER =
            "(" + NUMBERS.stream().sorted((a, b) -> b.length() - a.length()).collect(Collectors.joining("|"))
                    + "|\\d{1,2})";
    private static final String UNIT = "(?:counts?|beats?|cts?)";
    private static final List<Pattern> SAID = List.of(
            Pattern.compile(
                    "[,;]?\\s*(?:-\\s+)?\\b(?:and )?(?:that's|that is|thats|which is|which takes|which makes|this is|this takes|it's|it takes"
                            + "|taking|takes|that makes|that takes|making|all in|all over|lasting)\\s+(?:about |just |all )?"
                            + NUMBER
                            + "[- ]" + UNIT + "\\b",
                    Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "[,;]\\s*(?:for |that's |which is )?(?:another|a further) " + NUMBER + "(?:[- ]" + UNIT
                            + ")?\\b(?=\\s*(?:[.,;]|and\\b|then\\b|$))",
                    Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "[,;]\\s*" + NUMBER + " more(?: " + UNIT + ")?\\b(?=\\s*(?:[.,;]|and\\b|then\\b|$))",
                    Pattern.CASE_INSENSITIVE));
    private static final Pattern PLAIN =
            Pattern.compile("(?<!ty[- ])\\b" + NUMBER + "(?=[- ]" + UNIT + "\\b)", Pattern.CASE_INSENSITIVE);

    private SpokenLengths() {}

    /** The same line, each length in brackets, or at least in figures. */
    static SheetLine written(SheetLine line) {
        return MAY_SAY.matcher(line.text()).find() ? told(line) : line;
    }

    private static final Pattern MAY_SAY =
            Pattern.compile("\\b(?:" + UNIT + "|another|further|more)\\b", Pattern.CASE_INSENSITIVE);

    private static SheetLine told(SheetLine line) {
        SheetLine written = line;
        for (Pattern said : SAID) {
            Matcher length = said.matcher(written.text());
            while (length.find()) {
                written = written.with(length.start(), length.end(), " (" + figures(length.group(1)) + " counts)");
                length = said.matcher(written.text());
            }
        }
        Matcher plain = PLAIN.matcher(written.text());
        int from = 0;
        while (from <= written.text().length() && plain.find(from)) {
            String figures = figures(plain.group(1));
            written = written.with(plain.start(), plain.end(), figures);
            from = plain.start() + figures.length();
            plain = PLAIN.matcher(written.text());
        }
        return written;
    }

    private static String figures(String number) {
        int value = NUMBERS.indexOf(number.toLowerCase(Locale.ROOT)) + 1;
        return value > 0 ? String.valueOf(value) : number;
    }
}
