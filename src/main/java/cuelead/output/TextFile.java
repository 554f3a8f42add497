package cuelead.output;

import cuelead.report.Refused;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes text files in UTF-8, whole or not at all, as {@link WavFile} does. */
public final class TextFile {
    private TextFile() {}

    /**
     * Makes or replaces a file.
     *
     * @throws Refused when it cannot be written: why, and what to try; what stood there before stands there still
     */
    public static void write(Path target, String text) throws Refused {
        DataFile.write(target, StandardCharsets.UTF_8.encode(text));
    }
}
