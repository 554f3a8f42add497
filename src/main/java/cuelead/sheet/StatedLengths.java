package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers of counts behind what is danced: "(4)", "(4 counts)", "- 4 cts", "= 4", ", 4 beats", "for 4 counts", or the
 * bare number before a comma or at the end of the line.
 */
final class StatedLengths {
    private static final int LONGEST = 64;
    static final String UNIT = "(?:-?\\s*(?:counts?|cts?\\.?|beats?|c))";
    private static final String CLOCK = "(?<!\\d)[\\[(]?\\d{1,2}[:.]\\d\\d";
    private static final Pattern STATED = Pattern.compile(
            "[(\\[]\\s*(?:for |over |x ?|= ?)?(\\d{1,2})\\s*" + UNIT + "?\\s*[)\\]]"
                    + "|(?:[-=,:] *|\\bfor +|\\bover +|\\bin +|\\s\\s|\\t)(\\d{1,2})\\s*" + UNIT
                    + "\\b(?=\\s*(?:[.,;)/>+\\[]|-|$))"
                    + "|(?:\\s\\s|\\t|- |= ?)(\\d{1,2})(?!/\\d)\\s*(?=$|[,;/>+]|->|" + CLOCK + ")"
                    + "|(?<=[A-Za-z]) (\\d{1,2})\\s*(?:" + UNIT + "\\b)?(?=$|\\s*[,;>+]|\\s+(?:/|->|" + CLOCK + "))",
            Pattern.CASE_INSENSITIVE);

    private StatedLengths() {}

    /**
     * One of them.
     *
     * @param from   0-based index of the first character, its bracket or sign included
     * @param to     behind its last character
     * @param counts the number
     */
    record Stated(int from, int to, int counts) {}

    /** In the order of the line. */
    static List<Stated> in(String text) {
        List<Stated> places = new ArrayList<>();
        Matcher stated = STATED.matcher(text);
        while (stated.find()) {
            for (int group = 1; group <= stated.groupCount(); group++) {
                if (stated.group(group) != null && isLength(stated.group(group))) {
                    places.add(new Stated(stated.start(), stated.end(), Integer.parseInt(stated.group(group))));
                }
            }
        }
        return places;
    }

    /** The line with other words for each of them; told of them in the order of the line. */
    static SheetLine replaced(SheetLine line, List<Stated> places, IntFunction<String> wordsFor) {
        SheetLine replaced = line;
        int by = 0;
        for (Stated place : places) {
            String words = wordsFor.apply(place.counts());
            replaced = replaced.with(place.from() + by, place.to() + by, words);
            by += words.length() - (place.to() - place.from());
        }
        return replaced;
    }

    static boolean isLength(String digits) {
        int length = Integer.parseInt(digits);
        return length >= 1 && length <= LONGEST;
    }
}
