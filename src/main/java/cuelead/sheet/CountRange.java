package cuelead.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The counts of a section in brackets, as a heading has them: {@code [1-8]}, {@code (9 - 16)}, {@code [17-24&]} where the
 * last step is danced on the "and", {@code [&1-8]} where it begins before count 1, {@code [1-8&1]} where the last step is
 * the first count of what follows.
 *
 * @param first whole count
 * @param last  whole count; 9 for {@code 8&1}
 * @param end   0-based index of the first character behind the bracket
 */
record CountRange(int first, int last, int end) {
    private static final String AND = "(?:&|\\+|a|and)";
    private static final Pattern BRACKET = Pattern.compile(
            "[\\[(]\\s*(?:(?:counts?|cts?\\.?|beats?)\\s*)?" + AND + "?\\s*(\\d{1,4})\\s*[-\u2013\u2014]\\s*" + AND
                    + "?\\s*(\\d{1,4})\\s*(" + AND + "\\s*(\\d{1,4})?)?\\s*[\\])]",
            Pattern.CASE_INSENSITIVE);
    private static final int LONGEST = 128;

    /** The one that stands at this 0-based index. */
    static Optional<CountRange> at(String line, int from) {
        Matcher bracket = BRACKET.matcher(line).region(from, line.length());
        if (!bracket.lookingAt()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(bracket.group(1));
        int last = Integer.parseInt(bracket.group(2));
        boolean over = bracket.group(4) != null;
        boolean fits = first >= 1 && last >= first && last - first < LONGEST;
        boolean next =
                !over || Integer.parseInt(bracket.group(4)) == 1 || Integer.parseInt(bracket.group(4)) == last + 1;
        return fits && next
                ? Optional.of(new CountRange(first, over ? last + 1 : last, bracket.end()))
                : Optional.empty();
    }
}
