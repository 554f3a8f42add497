package cuelead.practice;

import cuelead.report.Refused;
import cuelead.song.BeatFile;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The folders that the program may use.
 *
 * @param cache   for what was measured about songs and for spoken words; may not exist yet; nothing in it is missed
 *                when it is lost
 * @param working the folder in which the user is
 * @param kept    for what the user has made; may not exist yet
 */
public record Places(Path cache, Path working, Optional<Path> kept) {
    /** Without a folder for what the user has made. */
    public Places(Path cache, Path working) {
        this(cache, working, Optional.empty());
    }

    /** Beats of songs whose own folders cannot be written. */
    public Optional<Path> beats() {
        return kept.map(folder -> folder.resolve("beats"));
    }

    /**
     * The beat file of a song: one that is kept apart, else the one beside it, there or not.
     *
     * @throws Refused when the song cannot be read
     */
    public Path beatFile(Path song) throws Refused {
        Optional<Path> apart = beats();
        return apart.isPresent() ? BeatFile.of(song, apart.get()) : BeatFile.beside(song);
    }
}
