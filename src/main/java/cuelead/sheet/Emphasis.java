package cuelead.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Signs that make words bold or a line a heading where text is typed: "**1-2** Step", "__Section 1__", "## Section 1". */
final class Emphasis {
    private static final List<Pattern> SIGNS = List.of(
            Pattern.compile("(?<![*\\w])(\\*\\*)(?=[^\\s*])[^*]+(?<=[^\\s*])(\\*\\*)(?!\\*)"),
            Pattern.compile("(?<![_\\w])(__)(?=[^\\s_])[^_]+(?<=[^\\s_])(__)(?![_\\w])"),
            Pattern.compile("(?<=\\s)(\\*)(?=[^\\s*])[^*]+(?<=[^\\s*])(\\*)(?=[\\s.,;:])"),
            Pattern.compile("^\\s*(?:>\\s*)?(#{1,6})(?=\\s+\\w)()"));

    private Emphasis() {}

    /** The same line with spaces for these signs. */
    static void leave(StringBuilder line) {
        for (Pattern sign : SIGNS) {
            Matcher found = sign.matcher(line.toString());
            while (found.find()) {
                blank(line, found.start(1), found.end(1));
                blank(line, found.start(2), found.end(2));
            }
        }
    }

    private static void blank(StringBuilder line, int from, int to) {
        for (int i = from; i < to; i++) {
            line.setCharAt(i, ' ');
        }
    }
}
