package cuelead.window.frame;

import cuelead.output.TextFile;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sheets that were pasted as text, each kept as a file of its own. */
public final class PastedSheets {
    private final Path folder;

    /**
     * Those of a folder.
     *
     * @param folder made when the first of them is kept
     */
    public PastedSheets(Path folder) {
        this.folder = folder;
    }

    /**
     * Keeps a text under the first free number.
     *
     * @throws Refused when it cannot be written
     */
    public Path keep(String text) throws Refused {
        try {
            Files.createDirectories(folder);
        } catch (IOException broken) {
            throw new Refused(
                    "The pasted sheet cannot be kept in " + folder + ": see whether its disk is full or protected.",
                    broken);
        }
        int number = 1;
        while (Files.exists(file(number))) {
            number++;
        }
        TextFile.write(file(number), text);
        return file(number);
    }

    private Path file(int number) {
        return folder.resolve("pasted-" + number + ".txt");
    }
}
