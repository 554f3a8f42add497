package cuelead.song;

import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The beat file of a song while a user puts its beats right: written after each step, and as it was before the first one
 * as soon as all are taken back. What another program has written meanwhile stays. Used on one thread.
 */
public final class KeptBeats {
    private final Path elsewhere;
    private Path file;
    private Optional<byte[]> first;
    private Optional<byte[]> last;

    /**
     * As it is now.
     *
     * @param file      where it is, or shall be
     * @param elsewhere where it shall be when it cannot be written there
     * @throws Refused when it is there and cannot be read
     */
    public KeptBeats(Path file, Path elsewhere) throws Refused {
        this.file = file;
        this.elsewhere = elsewhere;
        first = content(file);
        last = first;
    }

    /** Where it is, or shall be. */
    public Path file() {
        return file;
    }

    /** Whether it still is as it was found or written last. */
    public boolean isAsLeft() throws Refused {
        Optional<byte[]> now = content(file);
        return now.isPresent() == last.isPresent() && (now.isEmpty() || Arrays.equals(now.get(), last.get()));
    }

    /**
     * Writes beats.
     *
     * @param comments of the file
     * @throws Refused when they can be written nowhere, or the file was changed by another program; it stays as it is then
     */
    public void keep(BeatGrid beats, List<String> comments) throws Refused {
        put(BeatFile.print(beats, comments).getBytes(StandardCharsets.UTF_8));
    }

    /** Makes it as it was found; where it was not there, it is taken away. */
    public void restore() throws Refused {
        if (first.isPresent()) {
            put(first.get());
            return;
        }
        checkOthers();
        try {
            Files.deleteIfExists(file);
            last = first;
        } catch (IOException broken) {
            throw new Refused(
                    "The beat file " + file + " cannot be taken away: see whether its disk is protected.", broken);
        }
    }

    private void put(byte[] text) throws Refused {
        checkOthers();
        try {
            WholeFile.write(file, text);
        } catch (IOException here) {
            putElsewhere(text, here);
        }
        last = Optional.of(text);
    }

    private void putElsewhere(byte[] text, IOException here) throws Refused {
        try {
            Files.createDirectories(elsewhere.getParent());
            WholeFile.write(elsewhere, text);
            file = elsewhere;
            first = Optional.empty();
        } catch (IOException nowhere) {
            nowhere.addSuppressed(here);
            throw new Refused(
                    "The beats can be written neither to " + file + " nor to " + elsewhere
                            + ": free some space on the disk, or choose a song in a folder that you may write to.",
                    nowhere);
        }
    }

    private void checkOthers() throws Refused {
        if (!isAsLeft()) {
            throw new Refused("Another program has changed " + file
                    + " meanwhile, so it is left as it is: open the song again to go on from there.");
        }
    }

    private static Optional<byte[]> content(Path file) throws Refused {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        } catch (IOException broken) {
            throw Refusals.unreadable(file, broken);
        }
    }
}
