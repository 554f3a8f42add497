package cuelead.song;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a dance begins in a song, as its user has set it by ear: a comment in the song's beat file, which goes before
 * what the sheet says. Dances that go to the same song may begin at different places.
 *
 * @param seconds of count 1, from the song's first frame
 * @param dance   its title
 */
public record DanceBegin(double seconds, String dance) {
    private static final Pattern COMMENT = Pattern.compile(" count 1 at (\\d{1,9}\\.\\d{1,3}) of (.+)");

    public DanceBegin {
        dance = plain(dance);
    }

    private static String plain(String title) {
        String words = title.strip().replaceAll("\\s+", " ");
        return words.isEmpty() ? "a dance without a name" : words;
    }

    String comment() {
        return String.format(Locale.ROOT, " count 1 at %.3f of %s", seconds, dance);
    }

    /** That of a dance among a beat file's comments. */
    public static OptionalDouble of(String dance, List<String> comments) {
        String title = plain(dance);
        return all(comments).stream()
                .filter(begin -> begin.dance().equals(title))
                .mapToDouble(DanceBegin::seconds)
                .findFirst();
    }

    /** Those of all dances among a beat file's comments. */
    public static List<DanceBegin> all(List<String> comments) {
        return comments.stream()
                .map(COMMENT::matcher)
                .filter(Matcher::matches)
                .map(found -> new DanceBegin(Double.parseDouble(found.group(1)), found.group(2)))
                .toList();
    }

    /** The same dance, beginning at another time. */
    public DanceBegin at(double otherSeconds) {
        return new DanceBegin(otherSeconds, dance);
    }

    static List<String> without(String dance, List<String> comments) {
        return comments.stream()
                .filter(comment -> of(dance, List.of(comment)).isEmpty())
                .toList();
    }

    static List<String> among(List<String> comments) {
        return comments.stream()
                .filter(comment -> COMMENT.matcher(comment).matches())
                .toList();
    }
}
