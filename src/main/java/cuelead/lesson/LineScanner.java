package cuelead.lesson;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line of a lesson that is read from left to right, piece by piece; commas and blanks part its pieces. */
final class LineScanner {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]*");
    private static final Pattern STRETCH = Pattern.compile("[^,;]*");
    /** So that "walk" is not found in "walking", nor "72" in "72.5". */
    private static final String WORD_ENDS = "(?![\\p{L}\\p{N}]|\\.\\d)";

    private final String line;
    private int next;

    LineScanner(String line) {
        this.line = line;
        next = 0;
        skip();
    }

    /**
     * What was found.
     *
     * @param text   as it stands in the line
     * @param column of its beginning, 1-based
     * @param groups what its pattern has caught
     */
    record Found(String text, int column, Matcher groups) {
        /** A group's text; empty where the line has none. */
        Optional<String> group(String name) {
            return Optional.ofNullable(groups.group(name));
        }
    }

    /** A pattern of whole words in small or capital letters; a blank in it is any number of them. */
    static Pattern words(String regex) {
        return Pattern.compile(
                "(?:" + regex.replace(" ", "\\s+") + ")" + WORD_ENDS, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Whether anything is left of the line. */
    boolean hasMore() {
        return next < line.length();
    }

    /** Goes over what begins here, if it does. */
    Optional<Found> next(Pattern words) {
        Matcher matcher = words.matcher(line).region(next, line.length());
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        Found found = new Found(matcher.group(), next + 1, matcher);
        next = matcher.end();
        skip();
        return Optional.of(found);
    }

    /** Goes over everything up to the next comma. */
    Found stretch() {
        Found all = next(STRETCH).orElseThrow();
        return new Found(all.text().strip(), all.column(), all.groups());
    }

    private void skip() {
        Matcher between = BETWEEN.matcher(line).region(next, line.length());
        next = between.lookingAt() ? between.end() : next;
    }
}
