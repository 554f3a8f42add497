package cuelead.window.tracks;

import cuelead.output.TextFile;
import cuelead.output.TrackFormat;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where and as what tracks were saved the last time, in a file of two lines. One that is not understood is as if it were not
 * there: it is a comfort only.
 *
 * @param folder where they were put
 */
record TracksLately(Path folder, TrackFormat format) {
    private static final String NAME = "tracks.txt";

    /** Reads it; empty where the folder is not there any more, too. */
    static Optional<TracksLately> in(Path kept) {
        try {
            List<String> lines = Files.readAllLines(kept.resolve(NAME));
            TracksLately lately = new TracksLately(Path.of(lines.get(0)), TrackFormat.valueOf(lines.get(1)));
            return Optional.of(lately).filter(known -> Files.isDirectory(known.folder));
        } catch (IOException | InvalidPathException | IndexOutOfBoundsException nothing) {
            return Optional.empty();
        } catch (IllegalArgumentException noFormat) {
            return Optional.empty();
        }
    }

    /** Writes it, where that can be done. */
    void keep(Path kept) {
        try {
            Files.createDirectories(kept);
            TextFile.write(kept.resolve(NAME), folder + "\n" + format + "\n");
        } catch (IOException | Refused cannot) {
            // the next start is as if nothing had been saved before
        }
    }
}
