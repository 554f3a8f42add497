package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;

/**
 * Writes a file whole or not at all: under a temporary name in the same folder, which takes its place at the end. On
 * any failure, and when the program is interrupted, the temporary one is deleted and an older file of that name stays
 * as it was.
 *
 * @param opens how a new file is opened
 */
record WholeWriting(OpensChannel opens) {
    /** What is written. */
    @FunctionalInterface
    interface Content {
        void into(SeekableByteChannel channel) throws IOException, InterruptedException;
    }

    /**
     * Writes it.
     *
     * @throws Refused              when the file cannot be written: why, and what to try
     * @throws InterruptedException when the thread is interrupted; no file is left
     */
    void write(Path target, Content content) throws Refused, InterruptedException {
        try (Unfinished unfinished = Unfinished.beside(target, opens)) {
            content.into(unfinished.channel());
            unfinished.putInPlace();
        } catch (IOException failure) {
            if (Thread.interrupted()) {
                throw asInterruption(failure);
            }
            throw WriteFailure.refusal(target, failure);
        }
    }

    private static InterruptedException asInterruption(IOException failure) {
        InterruptedException interruption = new InterruptedException("interrupted while writing");
        interruption.initCause(failure);
        return interruption;
    }
}
