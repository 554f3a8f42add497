package cuelead.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.WritableByteChannel;

/** Writes all that a buffer has left: a channel may take less of it at a time. */
final class Drain {
    private Drain() {}

    static void into(WritableByteChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }
}
