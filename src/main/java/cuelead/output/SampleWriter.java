package cuelead.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;

/** Writes one WAV file to a channel as its samples come; the lengths in its header follow at the end. */
final class SampleWriter implements TrackWriter {
    private static final int BUFFER_BYTES = 1 << 16;

    private final SeekableByteChannel channel;
    private final WavHeader header;
    private final ByteBuffer following;
    private final TpdfDither dither = new TpdfDither();
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    private long dataBytes;

    SampleWriter(SeekableByteChannel channel, WavHeader header) {
        this(channel, header, ByteBuffer.allocate(0));
    }

    /** @param following chunks behind the samples, which are an even number of bytes then */
    SampleWriter(SeekableByteChannel channel, WavHeader header, ByteBuffer following) {
        this.channel = channel;
        this.header = header;
        this.following = following;
    }

    @Override
    public void begin() throws IOException {
        Drain.into(channel, header.bytes(0, 0));
    }

    @Override
    public void write(float[] samples, int from, int count) throws IOException, InterruptedException {
        if (Thread.interrupted()) {
            throw new InterruptedException("interrupted while writing");
        }
        dataBytes += (long) count * header.format().sampleBytes();
        if (dataBytes > Integer.MAX_VALUE - WavHeader.BYTES - following.remaining()) {
            throw new TooLongForWav();
        }
        for (int i = from; i < from + count; i++) {
            if (buffer.remaining() < Float.BYTES) {
                flush();
            }
            header.format().put(samples[i], dither, buffer);
        }
    }

    @Override
    public void end() throws IOException {
        flush();
        int followingBytes = following.remaining();
        Drain.into(channel, following);
        channel.position(0);
        Drain.into(channel, header.bytes((int) dataBytes, followingBytes));
    }

    private void flush() throws IOException {
        Drain.into(channel, buffer.flip());
        buffer.clear();
    }

    /** More samples than a WAV file is sure to be read with. */
    static final class TooLongForWav extends IOException {
        private static final long serialVersionUID = 1;

        TooLongForWav() {
            super("longer than 2 GiB");
        }
    }
}
