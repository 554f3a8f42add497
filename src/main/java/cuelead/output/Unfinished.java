package cuelead.output;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A file that is being made under a temporary name beside its place. Closing it deletes it unless it was put in
 * place; so does the end of the program, for instance by Ctrl-C.
 */
final class Unfinished implements AutoCloseable {
    private final Path target;
    private final Path temporary;
    private final SeekableByteChannel channel;
    private final Thread atExit;

    private Unfinished(Path target, Path temporary, SeekableByteChannel channel) {
        this.target = target;
        this.temporary = temporary;
        this.channel = channel;
        atExit = new Thread(() -> temporary.toFile().delete(), "cuelead-delete-unfinished");
    }

    static Unfinished beside(Path target, OpensChannel opens) throws IOException {
        if (Files.isDirectory(target)) {
            throw new FileSystemException(target.toString(), null, "Is a directory");
        }
        Path whole = target.toAbsolutePath();
        Path temporary = whole.resolveSibling(
                "." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        Files.deleteIfExists(temporary);
        Unfinished unfinished = new Unfinished(whole, temporary, opens.open(temporary));
        Runtime.getRuntime().addShutdownHook(unfinished.atExit);
        return unfinished;
    }

    SeekableByteChannel channel() {
        return channel;
    }

    void putInPlace() throws IOException {
        channel.close();
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            Files.deleteIfExists(temporary);
            forgetAtExit();
        }
    }

    private void forgetAtExit() {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }
}
