package cuelead.window.sheet;

import cuelead.output.TextFile;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * Where a sheet is kept. The file that the user chose is never written: with the first edit the sheet moves into a copy of
 * its own, which a pasted sheet has from the beginning. Safe on any thread.
 */
final class EditedCopy {
    private static final String ENDING = ".txt";

    private final Path folder;
    private final Path chosen;
    private Optional<Path> copy;
    private String kept;
    private Optional<FileTime> written;

    /**
     * Of a sheet that was opened.
     *
     * @param folder for copies; made when it is needed
     * @param text   as it was read
     */
    EditedCopy(Path folder, Path chosen, String text) {
        this.folder = folder;
        this.chosen = chosen;
        boolean isOurs = folder.toAbsolutePath()
                .normalize()
                .equals(chosen.toAbsolutePath().normalize().getParent());
        copy = isOurs && chosen.toString().endsWith(ENDING) ? Optional.of(chosen) : Optional.empty();
        kept = text;
        written = lastWritten();
    }

    /** The file that was opened. */
    Path chosen() {
        return chosen;
    }

    /** The file that holds the sheet now. */
    synchronized Path file() {
        return copy.orElse(chosen);
    }

    /** Whether a text is the one that is kept. */
    synchronized boolean holds(String text) {
        return kept.equals(text);
    }

    /**
     * Keeps a text.
     *
     * @return whether a copy was made for it
     * @throws Refused when it cannot be written; what was kept is kept still
     */
    synchronized boolean keep(String text) throws Refused {
        if (kept.equals(text)) {
            return false;
        }
        boolean isNew = copy.isEmpty();
        Path file = isNew ? free() : copy.get();
        TextFile.write(file, text);
        copy = Optional.of(file);
        kept = text;
        written = lastWritten();
        return isNew;
    }

    /** Whether another program has written the file since it was read or kept here. */
    synchronized boolean isWrittenElsewhere() {
        return !lastWritten().equals(written);
    }

    private Optional<FileTime> lastWritten() {
        try {
            return Optional.of(Files.getLastModifiedTime(file()));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Named like the chosen file, with a number where there is one of that name. */
    private Path free() throws Refused {
        try {
            Files.createDirectories(folder);
        } catch (IOException broken) {
            throw new Refused(
                    "Your changes cannot be kept in " + folder + ": see whether its disk is full or protected.",
                    broken);
        }
        String name = String.valueOf(chosen.getFileName()).replaceFirst("(?<=.)\\.[A-Za-z0-9]{1,5}$", "");
        Path file = folder.resolve(name + ENDING);
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve(name + "-" + number + ENDING);
        }
        return file;
    }
}
