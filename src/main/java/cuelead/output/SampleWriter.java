package cuelead.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;

/** Writes one WAV file to a channel as its samples come; the lengths in its header follow at the end. */
final class SampleWriter {
    private static final int BUFFER_BYTES = 1 << 16;

    private final SeekableByteChannel channel;
    private final WavHeader header;
    private final TpdfDither dither = new TpdfDither();
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    private long dataBytes;

    SampleWriter(SeekableByteChannel channel, WavHeader header) {
        this.channel = channel;
        this.header = header;
    }

    void begin() throws IOException {
        drain(header.bytes(0));
    }

    /** Writes the next samples. */
    void write(float[] samples, int from, int count) throws IOException, InterruptedException {
        if (Thread.interrupted()) {
            throw new InterruptedException("interrupted while writing");
        }
        dataBytes += (long) count * header.format().sampleBytes();
        if (dataBytes > Integer.MAX_VALUE - WavHeader.BYTES) {
            throw new TooLongForWav();
        }
        for (int i = from; i < from + count; i++) {
            if (buffer.remaining() < Float.BYTES) {
                flush();
            }
            header.format().put(samples[i], dither, buffer);
        }
    }

    void end() throws IOException {
        flush();
        channel.position(0);
        drain(header.bytes((int) dataBytes));
    }

    private void flush() throws IOException {
        drain(buffer.flip());
        buffer.clear();
    }

    private void drain(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    /** More samples than a WAV file is sure to be read with. */
    static final class TooLongForWav extends IOException {
        private static final long serialVersionUID = 1;

        TooLongForWav() {
            super("longer than 2 GiB");
        }
    }
}
