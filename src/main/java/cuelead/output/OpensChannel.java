package cuelead.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** How a file that does not exist yet is opened for writing. */
@FunctionalInterface
interface OpensChannel {
    OpensChannel ON_DISK = file -> FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    SeekableByteChannel open(Path file) throws IOException;
}
