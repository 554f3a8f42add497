package cuelead.output;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;

/**
 * A recording of one channel that goes to its file as it is made: a WAV file whose header is put right once a second, so
 * that it opens whatever becomes of the program, and holds all but the last second. How late the recording is against the
 * song stands in it as a {@link RoundTripNote}. An older file is never written over. Thread-safe: when the program is ended,
 * another thread may close it.
 */
public final class GrowingTake implements AutoCloseable {
    private static final double HEADER_SECONDS = 1;

    private final Path file;
    private final SeekableByteChannel channel;
    private final WavHeader header;
    private final TpdfDither dither = new TpdfDither();
    private double roundTripSeconds;
    private long frames;
    private long framesInHeader;
    private boolean isClosed;

    private GrowingTake(Path file, SeekableByteChannel channel, SampleRate rate, double roundTripSeconds) {
        this.file = file;
        this.channel = channel;
        header = new WavHeader(WavFormat.PCM_16_ROUNDED, 1, rate);
        this.roundTripSeconds = roundTripSeconds;
    }

    /**
     * Begins one.
     *
     * @param roundTripSeconds how much later the recording is than the song
     * @throws Refused when it cannot be written: why, and what to try
     */
    public static GrowingTake begin(Path file, SampleRate rate, double roundTripSeconds) throws Refused {
        return begin(file, rate, roundTripSeconds, OpensChannel.ON_DISK);
    }

    /** @param opens how the new file is opened */
    static GrowingTake begin(Path file, SampleRate rate, double roundTripSeconds, OpensChannel opens) throws Refused {
        try {
            GrowingTake take = new GrowingTake(file, opens.open(file), rate, roundTripSeconds);
            take.writeHeader();
            return take;
        } catch (IOException cannot) {
            throw WriteFailure.refusal(file, cannot);
        }
    }

    /** How much of it is in the file. */
    public synchronized long frames() {
        return frames;
    }

    /** Puts another round trip into the file, with the next header. */
    public synchronized void roundTrip(double seconds) {
        roundTripSeconds = seconds;
    }

    /**
     * Writes on; nothing any more once it is closed.
     *
     * @throws Refused when no more can be written (a full disk); what is in the file stays there
     */
    public synchronized void write(float[] samples, int from, int count) throws Refused {
        if (isClosed) {
            return;
        }
        ByteBuffer bytes = ByteBuffer.allocate(count * header.frameBytes()).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = from; i < from + count; i++) {
            header.format().put(samples[i], dither, bytes);
        }
        try {
            Drain.into(channel, bytes.flip());
            frames += count;
            if (frames - framesInHeader >= header.rate().frameAt(HEADER_SECONDS)) {
                writeHeader();
            }
        } catch (IOException cannot) {
            throw WriteFailure.refusal(file, cannot);
        }
    }

    private void writeHeader() throws IOException {
        channel.position(0);
        Drain.into(
                channel,
                RoundTripNote.withNote(header, Math.toIntExact(frames * header.frameBytes()), roundTripSeconds));
        channel.position(RoundTripNote.headerBytes() + frames * header.frameBytes());
        framesInHeader = frames;
    }

    /** Puts the header right for the last time; a second time it does nothing. */
    @Override
    public synchronized void close() throws Refused {
        if (isClosed) {
            return;
        }
        isClosed = true;
        try (SeekableByteChannel closed = channel) {
            writeHeader();
            closed.truncate(RoundTripNote.headerBytes() + frames * header.frameBytes());
        } catch (IOException cannot) {
            throw WriteFailure.refusal(file, cannot);
        }
    }
}
