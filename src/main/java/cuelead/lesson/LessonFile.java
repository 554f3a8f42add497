package cuelead.lesson;

import cuelead.plan.Timeline;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.nio.file.Files;
import java.nio.file.Path;

/** A lesson as a text file that an instructor can edit and keep beside the sheet. */
public final class LessonFile {
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
        return new LessonReader(file.toString(), timeline).read(UserText.read(file, "The lesson"));
    }
}
