package cuelead.song;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: to a temporary neighbour first, which is then moved into place. */
final class WholeFile {
    private WholeFile() {}

    /** Replaces or makes a file. When it cannot be written, what stood there before stands there still */
    static void write(Path file, byte[] content) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path neighbour = target.resolveSibling(
                target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            fill(neighbour, content);
            move(neighbour, target);
        } finally {
            Files.deleteIfExists(neighbour);
        }
    }

    private static void fill(Path neighbour, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                neighbour, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(content);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            // A full disk may come to light only here.
            channel.force(true);
        }
    }

    private static void move(Path neighbour, Path target) throws IOException {
        try {
            Files.move(neighbour, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(neighbour, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
