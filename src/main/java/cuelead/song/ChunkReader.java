package cuelead.song;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Reads the chunked headers of WAV (little end first) and AIFF (big end first) and knows where it is. */
final class ChunkReader {
    private final DataInputStream in;
    private final boolean littleEnd;
    private long offset;

    ChunkReader(InputStream in, java.nio.ByteOrder order) {
        this.in = new DataInputStream(in);
        this.littleEnd = order == java.nio.ByteOrder.LITTLE_ENDIAN;
    }

    long offset() {
        return offset;
    }

    String name() throws IOException {
        return new String(bytes(4), StandardCharsets.ISO_8859_1);
    }

    byte[] bytes(int count) throws IOException {
        byte[] bytes = new byte[count];
        in.readFully(bytes);
        offset += count;
        return bytes;
    }

    int int16() throws IOException {
        offset += 2;
        int value = in.readUnsignedShort();
        return littleEnd ? Short.toUnsignedInt(Short.reverseBytes((short) value)) : value;
    }

    long int32() throws IOException {
        offset += 4;
        int value = in.readInt();
        return Integer.toUnsignedLong(littleEnd ? Integer.reverseBytes(value) : value);
    }

    void skip(long count) throws IOException {
        long left = count;
        while (left > 0) {
            long skipped = in.skip(left);
            if (skipped <= 0) {
                if (in.read() < 0) {
                    throw new EOFException();
                }
                skipped = 1;
            }
            left -= skipped;
        }
        offset += count;
    }
}
