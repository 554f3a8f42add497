package cuelead.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;

/** A channel on a disk with room for 100,000 bytes. */
record FullDisk(SeekableByteChannel disk) implements SeekableByteChannel {
    @Override
    public int write(ByteBuffer bytes) throws IOException {
        if (disk.size() + bytes.remaining() > 100_000) {
            throw new IOException("No space left on device");
        }
        return disk.write(bytes);
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
        return disk.read(bytes);
    }

    @Override
    public long position() throws IOException {
        return disk.position();
    }

    @Override
    public SeekableByteChannel position(long position) throws IOException {
        disk.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return disk.size();
    }

    @Override
    public SeekableByteChannel truncate(long size) throws IOException {
        disk.truncate(size);
        return this;
    }

    @Override
    public boolean isOpen() {
        return disk.isOpen();
    }

    @Override
    public void close() throws IOException {
        disk.close();
    }
}
