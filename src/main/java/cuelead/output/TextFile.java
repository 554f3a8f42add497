package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
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
        try (Unfinished unfinished = Unfinished.beside(target, OpensChannel.ON_DISK)) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                unfinished.channel().write(bytes);
            }
            unfinished.putInPlace();
        } catch (IOException failure) {
            throw WriteFailure.refusal(target, failure);
        }
    }
}
