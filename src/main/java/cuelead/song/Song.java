package cuelead.song;

import cuelead.report.Problem;
import cuelead.sound.Pcm;
import java.nio.file.Path;
import java.util.List;

/**
 * A song that is open: its samples (still filling while it loads) and what was found wrong with its file.
 *
 * @param file     where it came from
 * @param pcm      its samples, timed as in every other player (encoder delay trimmed)
 * @param problems what could be used in spite of being damaged or misnamed, a warning each
 */
public record Song(Path file, Pcm pcm, List<Problem> problems) {
    public Song {
        problems = List.copyOf(problems);
    }
}
