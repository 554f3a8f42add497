package cuelead.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What typesetting did to words, undone: ligatures, soft hyphens, words broken at a line's end. */
final class Breaks {
    private static final char SOFT_HYPHEN = '\u00ad';
    private static final Pattern BROKEN = Pattern.compile("^(.*?)([A-Za-z]+)[-\u00ad\u2010]$");
    private static final Pattern REST = Pattern.compile("^\\s*([a-z]+\\S*)\\s*(.*)$");
    /** First halves of words that are written with a hyphen wherever they stand (common practice). */
    private static final Set<String> HYPHENATED = Set.of(
            "ball", "box", "coaster", "cross", "full", "half", "heel", "hip", "kick", "quarter", "rock", "sailor",
            "side", "step", "three", "toe", "triple", "two", "four", "right", "left", "out", "in", "behind", "hold");

    private static final Pattern ENDING = Pattern.compile("[a-z]?(ing|ed|s)\\W*");
    private static final String[] LIGATURES = {"ff", "fi", "fl", "ffi", "ffl", "st", "st"};
    private static final char FIRST_LIGATURE = '\ufb00';

    private Breaks() {}

    /** A ligature as its letters, a space of any width as a space; no soft hyphens. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int ligature = c - FIRST_LIGATURE;
            if (ligature >= 0 && ligature < LIGATURES.length) {
                plain.append(LIGATURES[ligature]);
            } else if (c != SOFT_HYPHEN) {
                plain.append(c == '\u00a0' || Character.getType(c) == Character.SPACE_SEPARATOR ? ' ' : c);
            }
        }
        return plain.toString();
    }

    /** The lines with broken words whole: the rest of the word goes to the line in which it begins. */
    static List<String> mended(List<String> lines) {
        List<String> mended = new ArrayList<>();
        for (String line : lines) {
            String last = mended.isEmpty() ? "" : mended.get(mended.size() - 1);
            Matcher broken = BROKEN.matcher(last);
            Matcher rest = REST.matcher(line);
            if (broken.matches() && rest.matches()) {
                boolean hyphen = HYPHENATED.contains(broken.group(2).toLowerCase(Locale.ROOT))
                        && !ENDING.matcher(rest.group(1)).matches()
                        && last.charAt(last.length() - 1) != SOFT_HYPHEN;
                mended.set(mended.size() - 1, broken.group(1) + broken.group(2) + (hyphen ? "-" : "") + rest.group(1));
                if (!rest.group(2).isEmpty()) {
                    mended.add(rest.group(2));
                }
            } else {
                mended.add(line);
            }
        }
        return mended;
    }
}
