package cuelead.lesson;

import cuelead.plan.Timeline;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A lesson as a text file that an instructor can edit and keep beside the sheet. */
public final class LessonFile {
    /** Longer files are no lessons. */
    private static final long MOST_BYTES = 1_000_000;

    private LessonFile() {}

    /**
     * Reads a lesson for a dance.
     *
     * @param timeline the dance at full speed, over its music where it has any
     * @throws Refused when the file is missing or cannot be read; mistakes in it are problems instead
     */
    public static LessonReader.Reading read(Path file, Timeline timeline) throws Refused {
        if (Files.notExists(file)) {
            throw new Refused("There is no file " + file + ": name a lesson that \"--save\" has written.");
        }
        if (Files.isDirectory(file)) {
            throw new Refused(file + " is a folder: name a lesson in it.");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused(file + " is too long for a lesson: name the text file that \"--save\" has written.");
            }
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            return new LessonReader(file.toString(), timeline).read(text);
        } catch (IOException broken) {
            throw new Refused(file + " cannot be read: check the file and its permissions.", broken);
        }
    }
}
