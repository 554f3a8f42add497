package cuelead.voice;

import cuelead.report.Refused;
import java.nio.file.Path;

/** Decodes the sound files of a folder of recorded words. */
@FunctionalInterface
public interface WordFileReader {
    /**
     * The whole file, mixed to one channel.
     *
     * @throws Refused when it is no sound file, is damaged, or cannot be read
     */
    MonoSound read(Path file) throws Refused;
}
