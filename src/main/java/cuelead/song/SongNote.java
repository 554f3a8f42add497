package cuelead.song;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The comment by which a beat file tells whose beats it holds.
 *
 * @param name    of the song's file, without its folder
 * @param seconds length of the song
 */
public record SongNote(String name, double seconds) {
    private static final Pattern COMMENT = Pattern.compile(" song (.+), (\\d{1,9}\\.\\d{1,3}) s long");
    /** Copies of one song in other formats differ by less: silence that an encoder adds at its ends. */
    private static final double SAME_SECONDS = 0.5;

    String comment() {
        return String.format(Locale.ROOT, " song %s, %.3f s long", name.replaceAll("\\R", " "), seconds);
    }

    /** The note among a beat file's comments; files that were written by hand have none. */
    public static Optional<SongNote> in(List<String> comments) {
        return comments.stream()
                .map(COMMENT::matcher)
                .filter(Matcher::matches)
                .map(m -> new SongNote(m.group(1), Double.parseDouble(m.group(2))))
                .findFirst();
    }

    /** Whether this can be that song, renamed or in another format: whether they are equally long. */
    public boolean canBe(SongNote other) {
        return Math.abs(seconds - other.seconds) <= SAME_SECONDS;
    }

    /** {@code my-song.mp3, 3:07 long} */
    @Override
    public String toString() {
        return name + ", " + Clock.minutesSeconds(seconds) + " long";
    }
}
