package cuelead.song;

import cuelead.time.SampleRate;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * The header of a WAV file (Multimedia programming interface and data specifications 1.0, Microsoft and IBM 1991;
 * WAVEFORMATEXTENSIBLE for more than two channels or 24 bits; RF64 by EBU Tech 3306).
 */
final class WavHeader {
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xfffe;
    /** Bytes of the format chunk up to and including the code of the format proper. */
    private static final int EXTENSIBLE_BYTES = 26;
    /** Sizes that writers to a pipe leave behind; RF64 keeps the true size elsewhere. */
    private static final long UNKNOWN_SIZE = 0xffff_ff00L;

    private WavHeader() {}

    /**
     * Reads up to the first sample.
     *
     * @return empty when samples are stored in a way that is not plain (such as ADPCM)
     * @throws java.io.EOFException when the file ends before its first sample
     */
    static Optional<RawLayout> read(InputStream in) throws IOException {
        ChunkReader chunks = new ChunkReader(in, ByteOrder.LITTLE_ENDIAN);
        chunks.skip(12);
        Optional<RawLayout> format = Optional.empty();
        while (true) {
            String name = chunks.name();
            long size = chunks.int32();
            if (name.equals("data")) {
                long promised = size == 0 || size >= UNKNOWN_SIZE ? RawLayout.TO_THE_END : size;
                return format.map(
                        f -> new RawLayout(f.rate(), f.channels(), f.format(), f.order(), chunks.offset(), promised));
            }
            long end = chunks.offset() + size + size % 2;
            if (name.equals("fmt ") && size >= 16) {
                format = format(chunks, size);
            }
            chunks.skip(end - chunks.offset());
        }
    }

    private static Optional<RawLayout> format(ChunkReader chunks, long size) throws IOException {
        int code = chunks.int16();
        int channels = chunks.int16();
        long hz = chunks.int32();
        chunks.skip(4);
        int frameBytes = chunks.int16();
        chunks.skip(2);
        if (code == EXTENSIBLE && size >= EXTENSIBLE_BYTES) {
            chunks.skip(8);
            code = chunks.int16();
        }
        if (channels < 1 || channels > 32 || hz < 4_000 || hz > 384_000) {
            return Optional.empty();
        }
        SampleRate rate = new SampleRate((int) hz);
        return sampleFormat(code, frameBytes / channels)
                .map(format -> new RawLayout(rate, channels, format, ByteOrder.LITTLE_ENDIAN, 0, 0));
    }

    private static Optional<SampleFormat> sampleFormat(int code, int sampleBytes) {
        if (code == FLOAT) {
            return switch (sampleBytes) {
                case 4 -> Optional.of(SampleFormat.FLOAT_32);
                case 8 -> Optional.of(SampleFormat.FLOAT_64);
                default -> Optional.empty();
            };
        }
        if (code != PCM) {
            return Optional.empty();
        }
        return switch (sampleBytes) {
            case 1 -> Optional.of(SampleFormat.UNSIGNED_8);
            case 2 -> Optional.of(SampleFormat.SIGNED_16);
            case 3 -> Optional.of(SampleFormat.SIGNED_24);
            case 4 -> Optional.of(SampleFormat.SIGNED_32);
            default -> Optional.empty();
        };
    }
}
