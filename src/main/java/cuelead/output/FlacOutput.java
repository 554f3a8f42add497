package cuelead.output;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import net.sourceforge.javaflacencoder.FLACOutputStream;

/**
 * Where the encoder writes a FLAC file, into which a metadata block of our own is put: the encoder writes none but
 * {@code STREAMINFO}, and comes back to that one at the end. Positions are the encoder's own.
 */
final class FlacOutput implements FLACOutputStream {
    private static final int BUFFER_BYTES = 1 << 16;

    /** The mark {@code fLaC}, then a block of 4 + 34 bytes (RFC 9639, sections 6 and 8.2). */
    private static final int HEAD_BYTES = 4 + 4 + 34;

    private static final int BLOCK_TYPE_AT = 4;

    /** The bit of a block's first byte that says that it is the last one (section 8.1). */
    private static final int LAST_BLOCK = 0x80;

    private final SeekableByteChannel channel;
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES);
    private final ByteArrayOutputStream head = new ByteArrayOutputStream();
    private boolean isHead = true;
    private long position;
    private long size;
    private long soundAt;
    private int insertedBytes;

    FlacOutput(SeekableByteChannel channel) {
        this.channel = channel;
    }

    /** To be called when the encoder has written what stands before the sound. */
    void endHead(byte[] lastBlock) throws IOException {
        byte[] streamInfo = head.toByteArray();
        isHead = false;
        soundAt = position;
        insertedBytes = HEAD_BYTES + lastBlock.length - streamInfo.length;
        streamInfo[BLOCK_TYPE_AT] &= (byte) ~LAST_BLOCK;
        put(streamInfo, 0, HEAD_BYTES);
        put(lastBlock, 0, lastBlock.length);
    }

    void flush() throws IOException {
        buffer.flip();
        Drain.into(channel, buffer);
        buffer.clear();
    }

    private void put(byte[] bytes, int from, int count) throws IOException {
        for (int done = 0; done < count; ) {
            if (!buffer.hasRemaining()) {
                flush();
            }
            int next = Math.min(count - done, buffer.remaining());
            buffer.put(bytes, from + done, next);
            done += next;
        }
    }

    @Override
    public int write(byte[] bytes, int from, int count) throws IOException {
        if (isHead) {
            head.write(bytes, from, count);
        } else {
            put(bytes, from, count);
        }
        position += count;
        size = Math.max(size, position);
        return count;
    }

    @Override
    public void write(byte one) throws IOException {
        write(new byte[] {one}, 0, 1);
    }

    @Override
    public long seek(long to) throws IOException {
        flush();
        channel.position(to < soundAt ? to : to + insertedBytes);
        position = to;
        return to;
    }

    @Override
    public boolean canSeek() {
        return true;
    }

    @Override
    public long size() {
        return size;
    }

    @Override
    public long getPos() {
        return position;
    }
}
