package cuelead.song;

import cuelead.time.SampleRate;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/** The header of an AIFF or AIFF-C file (Audio interchange file format 1.3, Apple 1989; AIFF-C draft, 1991). */
final class AiffHeader {
    private AiffHeader() {}

    /**
     * Reads up to the first sample.
     *
     * @return empty when samples are stored in a way that is not plain
     * @throws java.io.EOFException when the file ends before its first sample
     */
    static Optional<RawLayout> read(InputStream in) throws IOException {
        ChunkReader chunks = new ChunkReader(in, ByteOrder.BIG_ENDIAN);
        chunks.skip(8);
        boolean isAifc = chunks.name().equals("AIFC");
        Optional<RawLayout> format = Optional.empty();
        while (true) {
            String name = chunks.name();
            long size = chunks.int32();
            long end = chunks.offset() + size + size % 2;
            if (name.equals("COMM")) {
                format = format(chunks, isAifc);
            } else if (name.equals("SSND") && format.isPresent()) {
                long gap = chunks.int32();
                chunks.skip(4 + gap);
                long promised = Math.min(format.get().dataBytes(), Math.max(0, size - 8 - gap));
                return format.map(
                        f -> new RawLayout(f.rate(), f.channels(), f.format(), f.order(), chunks.offset(), promised));
            }
            chunks.skip(end - chunks.offset());
        }
    }

    private static Optional<RawLayout> format(ChunkReader chunks, boolean isAifc) throws IOException {
        int channels = chunks.int16();
        long frames = chunks.int32();
        int bits = chunks.int16();
        double hz = extended(chunks.bytes(10));
        String coding = isAifc ? chunks.name() : "NONE";
        if (channels < 1 || channels > 32 || !(hz >= 4_000 && hz <= 384_000)) {
            return Optional.empty();
        }
        ByteOrder order = coding.equals("sowt") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        SampleRate rate = new SampleRate((int) Math.round(hz));
        return sampleFormat(coding, bits)
                .map(format -> new RawLayout(rate, channels, format, order, 0, frames * channels * format.byteCount()));
    }

    private static Optional<SampleFormat> sampleFormat(String coding, int bits) {
        return switch (coding) {
            case "NONE", "sowt", "twos" ->
                switch ((bits + 7) / 8) {
                    case 1 -> Optional.of(SampleFormat.SIGNED_8);
                    case 2 -> Optional.of(SampleFormat.SIGNED_16);
                    case 3 -> Optional.of(SampleFormat.SIGNED_24);
                    case 4 -> Optional.of(SampleFormat.SIGNED_32);
                    default -> Optional.empty();
                };
            case "in24" -> Optional.of(SampleFormat.SIGNED_24);
            case "in32" -> Optional.of(SampleFormat.SIGNED_32);
            case "fl32", "FL32" -> Optional.of(SampleFormat.FLOAT_32);
            case "fl64", "FL64" -> Optional.of(SampleFormat.FLOAT_64);
            default -> Optional.empty();
        };
    }

    /** An 80-bit extended number of IEEE 754; only positive ones occur here. */
    private static double extended(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        int exponent = buffer.getShort() & 0x7fff;
        long mantissa = buffer.getLong();
        double unsigned = (mantissa >>> 1) * 2.0 + (mantissa & 1);
        return Math.scalb(unsigned, exponent - 16_383 - 63);
    }
}
