package cuelead.cli;

import cuelead.output.TextFile;
import cuelead.rehearse.Progress;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * What is kept of rehearsals, in one folder: {@code round-trips.txt}, and for each dance a folder with its takes,
 * {@code 2026-11-27-1.wav}, and its {@code progress.txt}.
 *
 * @param folder of all rehearsals
 * @param dance  the dance's name as a file's
 */
record RehearsalFolder(Path folder, String dance) {
    private static final String PROGRESS = "progress.txt";

    /** Refuses a place where it can be told that nothing can be made, before any work is done. */
    void check() throws Refused {
        Path there = dances().toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there) || !Files.isWritable(there)) {
            throw new Refused(cannotMake());
        }
    }

    /** Makes it where it is not there; late, so that nothing is left where nothing is recorded. */
    void make() throws Refused {
        try {
            Files.createDirectories(dances());
        } catch (IOException cannot) {
            throw new Refused(cannotMake(), cannot);
        }
    }

    private String cannotMake() {
        return "Cannot make the folder " + dances() + " for takes: choose another place with --folder.";
    }

    Path dances() {
        return folder.resolve(dance);
    }

    Path roundTrips() {
        return folder.resolve("round-trips.txt");
    }

    /** A file that is not there yet. */
    Path nextTake(LocalDate day) {
        int number = 1;
        while (Files.exists(take(day, number))) {
            number++;
        }
        return take(day, number);
    }

    private Path take(LocalDate day, int number) {
        return dances().resolve(day + "-" + number + ".wav");
    }

    Path progressFile() {
        return dances().resolve(PROGRESS);
    }

    /** @throws Refused when there is a file that cannot be read, or is not as Cuelead writes it */
    Progress progress() throws Refused {
        Path file = progressFile();
        return Files.exists(file) ? Progress.of(UserText.read(file, "The progress"), file) : Progress.NONE;
    }

    void keep(Progress progress) throws Refused {
        TextFile.write(progressFile(), progress.text());
    }
}
