package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Remembers what was measured about songs, a small file each, in a folder that the caller names. What is damaged
 * or of another version counts as not there, so that it is measured again. Safe on any thread and for several
 * programs at once.
 */
public final class SongCache {
    private static final String ENDING = ".song";

    private final Path folder;

    /** @param folder made when the first song is remembered */
    public SongCache(Path folder) {
        this.folder = folder;
    }

    /** What is remembered of a song; empty when nothing (readable) is. */
    public Optional<SongFacts> find(SongHash song) {
        Path file = file(song);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return FactsFormat.decode(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            // The cache only saves time: what it cannot give is measured again.
            return Optional.empty();
        }
    }

    /**
     * Keeps what was measured of a song, in place of what was known before.
     *
     * @return a note when it could not be written, which costs nothing but time at the next opening
     */
    public Optional<Problem> remember(SongHash song, SongFacts facts) {
        try {
            Files.createDirectories(folder);
            WholeFile.write(file(song), FactsFormat.encode(facts));
            return Optional.empty();
        } catch (IOException unwritable) {
            return Optional.of(new Problem(
                    Severity.NOTE,
                    "cache_unwritable",
                    folder.toString(),
                    0,
                    0,
                    "What was measured about the song cannot be kept here and is measured again next time.",
                    "Free some space on the disk, or see that the folder may be written to."));
        }
    }

    private Path file(SongHash song) {
        return folder.resolve(song.hex() + ENDING);
    }
}
