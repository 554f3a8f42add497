package cuelead.sheet;

import cuelead.dance.FigureRow;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One figure of an instructor's own.
 *
 * @param name    as it is called
 * @param pattern finds it in a line
 * @param words   what is danced, for the foot that usually begins
 * @param row     the same as a row of the figure table; empty where the words are not understood
 * @param line    1-based line of the file of figures
 */
record OwnFigure(String name, Pattern pattern, String words, Optional<FigureRow> row, int line) {
    private static final Set<String> LEFT = Set.of("l", "lf", "left");
    private static final Set<String> RIGHT = Set.of("r", "rf", "right");
    private static final Pattern FOOT = Pattern.compile("\\b(R|L|RF|LF|right|left)\\b", Pattern.CASE_INSENSITIVE);

    OwnFigure(String name, String words, Optional<FigureRow> row, int line) {
        this(
                name,
                Pattern.compile(
                        "(?<![\\p{L}\\d])" + Pattern.quote(name) + "(?![\\p{L}\\d])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE),
                words,
                row,
                line);
    }

    /** Other words in the place of its name, and of the foot beside it, between two 0-based indices. */
    record Edit(int from, int to, String words) {}

    static boolean isFoot(String word) {
        return LEFT.contains(word) || RIGHT.contains(word);
    }

    /** The words with the foot that begins them, where they name none: right by convention. */
    static String footed(String words) {
        return FOOT.matcher(words).find() ? words : "right " + words;
    }

    /** What takes the place of its name behind this index of a text; empty where it is not named. */
    Optional<Edit> in(String text, int behind) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.find(Math.min(behind, text.length()))) {
            return Optional.empty();
        }
        int before = wordStart(text, matcher.start());
        String ahead = plain(text.substring(before, matcher.start()));
        Matcher after = BEHIND.matcher(text).region(matcher.end(), text.length());
        boolean footBehind = !isFoot(ahead) && after.lookingAt();
        return Optional.of(new Edit(
                isFoot(ahead) ? before : matcher.start(),
                footBehind ? after.end() : matcher.end(),
                words(isFoot(ahead) ? ahead : footBehind ? plain(after.group(1)) : "")));
    }

    /** "Harbour wave L", "harbour wave (left)". */
    private static final Pattern BEHIND =
            Pattern.compile("\\s*\\(?\\s*(R|L|RF|LF|right|left)\\b\\s*\\)?", Pattern.CASE_INSENSITIVE);

    /** The words for this foot; as they are where none is named. */
    private String words(String foot) {
        Matcher first = FOOT.matcher(words);
        if (!first.find()) {
            return foot.isEmpty() ? words : foot + " " + words;
        }
        boolean leadsLeft = LEFT.contains(plain(first.group()));
        boolean other = leadsLeft ? RIGHT.contains(foot) : LEFT.contains(foot);
        return other ? FOOT.matcher(words).replaceAll(found -> swapped(found.group())) : words;
    }

    private static String swapped(String foot) {
        return LEFT.contains(plain(foot)) ? "right" : "left";
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    private static int wordStart(String text, int from) {
        int at = from;
        while (at > 0 && text.charAt(at - 1) == ' ') {
            at--;
        }
        while (at > 0 && Character.isLetter(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }
}
