package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The beats of a song as a text file beside it: one beat a line, {@code seconds TAB beat in the bar TAB count in
 * the phrase}, the plain form that beat-tracking research uses. The third column may be missing; {@code #} begins
 * a comment.
 */
public final class BeatFile {
    private static final String ENDING = ".beats";
    private static final int HASH_DIGITS = 16;
    static final String ENTRY_COMMENT = " likely count 1 ";
    private static final Pattern ENTRY = Pattern.compile(ENTRY_COMMENT + "(\\d+\\.\\d+)");
    private static final Pattern UNSURE = Pattern.compile(" unsure (\\d+\\.\\d+) (\\d+\\.\\d+)");

    private BeatFile() {}

    /**
     * What was read.
     *
     * @param beats    empty when there is an error among the problems
     * @param comments the text of whole comment lines, without their {@code #}, in order
     * @param problems all mistakes, in the order of the lines
     */
    public record Reading(Optional<BeatGrid> beats, List<String> comments, List<Problem> problems) {
        public Reading {
            comments = List.copyOf(comments);
            problems = List.copyOf(problems);
        }
    }

    /**
     * The beat file of a song: the one that is kept apart where there is one, else the one beside it, there or not.
     *
     * @param apart where beats are kept of songs whose own folders cannot be written
     */
    public static Path of(Path song, Path apart) throws Refused {
        if (Files.isDirectory(apart)) {
            Path kept = apart(song, apart);
            if (Files.exists(kept)) {
                return kept;
            }
        }
        return beside(song);
    }

    /**
     * Such a folder, made where it is not there.
     *
     * @throws Refused when it cannot be made
     */
    public static Path folder(Path apart) throws Refused {
        try {
            return Files.createDirectories(apart);
        } catch (IOException broken) {
            throw new Refused(
                    "The folder " + apart + " cannot be made: see whether its disk is full or protected.", broken);
        }
    }

    /** The file that keeps the beats of a song in such a folder; a song that is moved or renamed keeps its own. */
    public static Path apart(Path song, Path apart) throws Refused {
        return apart.resolve(SongHash.of(song).hex().substring(0, HASH_DIGITS) + ENDING);
    }

    /** {@code song.beats} beside {@code song.mp3}. */
    public static Path beside(Path song) {
        String name = song.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return song.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ENDING);
    }

    /**
     * Reads a beat file to its end, whatever is wrong in it.
     *
     * @throws Refused when the file is missing or cannot be read; mistakes in it are problems instead
     */
    public static Reading read(Path file) throws Refused {
        if (Files.notExists(file)) {
            throw Refusals.missing(file);
        }
        if (Files.isDirectory(file)) {
            throw new Refused(file + " is a folder: name a beat file in it.");
        }
        try {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            return new BeatReader(file.toString()).read(text);
        } catch (IOException broken) {
            throw Refusals.unreadable(file, broken);
        }
    }

    /**
     * Writes what was heard, marked as such: {@link #isUsers} can tell it from what a user has written or changed.
     *
     * @param song whose beats they are
     * @throws Refused as {@link #write}
     */
    public static void writeHeard(Path file, Hearing hearing, SongNote song) throws Refused {
        writeHeard(file, hearing, song, List.of());
    }

    /**
     * The same.
     *
     * @param begins where dances begin in the song
     */
    public static void writeHeard(Path file, Hearing hearing, SongNote song, List<DanceBegin> begins) throws Refused {
        write(file, hearing, BeatMark.HEARD, song, begins);
    }

    /**
     * Writes beats that a user has written or put right for another song, moved to the times of its copy.
     *
     * @param copy   whose beats they are now
     * @param begins where dances begin in the copy
     * @throws Refused as {@link #write}
     */
    public static void writeMoved(Path file, Hearing moved, SongNote copy, List<DanceBegin> begins) throws Refused {
        write(file, moved, BeatMark.MOVED, copy, begins);
    }

    private static void write(Path file, Hearing hearing, BeatMark mark, SongNote song, List<DanceBegin> begins)
            throws Refused {
        List<String> comments = new ArrayList<>(comments(hearing, mark, song));
        begins.forEach(begin -> comments.add(begin.comment()));
        write(file, hearing.beats(), comments);
    }

    /** The comments of {@link #writeHeard}. */
    static List<String> heardComments(Hearing hearing, SongNote song) {
        return comments(hearing, BeatMark.HEARD, song);
    }

    private static List<String> comments(Hearing hearing, BeatMark mark, SongNote song) {
        List<String> comments = new ArrayList<>();
        comments.add(mark.of(hearing.beats()));
        comments.add(song.comment());
        for (Hearing.Stretch stretch : hearing.unsure()) {
            comments.add(String.format(Locale.ROOT, " unsure %.1f %.1f", stretch.fromSeconds(), stretch.toSeconds()));
        }
        hearing.entrySeconds()
                .ifPresent(seconds -> comments.add(String.format(Locale.ROOT, ENTRY_COMMENT + "%.3f", seconds)));
        return comments;
    }

    /** What a file that was read says of the beats that were heard; empty when it has no usable beats. */
    public static Optional<Hearing> hearing(Reading reading) {
        return reading.beats().map(beats -> hearing(beats, reading.comments()));
    }

    static Hearing hearing(BeatGrid beats, List<String> comments) {
        return new Hearing(beats, unsure(comments), entry(comments));
    }

    private static List<Hearing.Stretch> unsure(List<String> comments) {
        return comments.stream()
                .map(UNSURE::matcher)
                .filter(Matcher::matches)
                .map(m -> new Hearing.Stretch(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))))
                .toList();
    }

    private static OptionalDouble entry(List<String> comments) {
        return comments.stream()
                .map(ENTRY::matcher)
                .filter(Matcher::matches)
                .mapToDouble(m -> Double.parseDouble(m.group(1)))
                .findFirst();
    }

    /** Whether a user wrote or changed what was read, so that it must not be heard anew. */
    public static boolean isUsers(Reading reading) {
        return !has(reading, BeatMark.HEARD);
    }

    /** Whether Cuelead wrote what was read for a file of that name and nobody has changed it since. */
    public static boolean isOwn(Reading reading, Path song) {
        String name = song.getFileName().toString();
        boolean isItsSong = SongNote.in(reading.comments())
                .filter(note -> note.name().equals(name))
                .isPresent();
        return isItsSong && (has(reading, BeatMark.HEARD) || has(reading, BeatMark.MOVED));
    }

    private static boolean has(Reading reading, BeatMark mark) {
        return reading.beats()
                .filter(beats -> mark.fits(beats, reading.comments()))
                .isPresent();
    }

    /**
     * Writes whole or not at all; times to the microsecond.
     *
     * @param comments put in front, a line each
     * @throws Refused when it cannot be written; what stood there before stands there still
     */
    public static void write(Path file, BeatGrid beats, List<String> comments) throws Refused {
        try {
            WholeFile.write(file, print(beats, comments).getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new Refused(
                    "The beat file " + file
                            + " cannot be written: free some space on its disk, or choose a folder that you may write to.",
                    broken);
        }
    }

    /** The text of a beat file. */
    public static String print(BeatGrid beats, List<String> comments) {
        StringBuilder text = new StringBuilder();
        for (String comment : comments) {
            text.append('#').append(comment).append('\n');
        }
        for (int i = 0; i < beats.size(); i++) {
            text.append(String.format(Locale.ROOT, "%.6f\t%d", beats.beatSeconds(i), beats.beatInBar(i)));
            if (beats.countInPhrase(i) > 0) {
                text.append('\t').append(beats.countInPhrase(i));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
