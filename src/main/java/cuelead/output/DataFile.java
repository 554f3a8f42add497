package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;

/** Writes files whose bytes are made already, whole or not at all, as {@link WavFile} does. */
public final class DataFile {
    private DataFile() {}

    /**
     * Makes or replaces a file.
     *
     * @throws Refused when it cannot be written: why, and what to try; what stood there before stands there still
     */
    public static void write(Path target, ByteBuffer bytes) throws Refused {
        try (Unfinished unfinished = Unfinished.beside(target, OpensChannel.ON_DISK)) {
            Drain.into(unfinished.channel(), bytes);
            unfinished.putInPlace();
        } catch (IOException failure) {
            throw WriteFailure.refusal(target, failure);
        }
    }
}
