package cuelead.output;

import cuelead.time.SampleRate;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** What stands before the samples of a WAV file: the chunks {@code RIFF}, {@code fmt }, {@code fact}, {@code data}. */
record WavHeader(WavFormat format, int channels, SampleRate rate) {
    static final int BYTES = 58;

    private static final int FMT_BYTES = 18;
    private static final int FACT_BYTES = 4;
    private static final int CHUNK_HEAD_BYTES = 8;

    int frameBytes() {
        return channels * format.sampleBytes();
    }

    /**
     * The bytes of it.
     *
     * @param dataBytes      length of the samples
     * @param followingBytes length of the chunks that follow them
     */
    ByteBuffer bytes(int dataBytes, int followingBytes) {
        ByteBuffer bytes = ByteBuffer.allocate(BYTES).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(ascii("RIFF"))
                .putInt(BYTES - CHUNK_HEAD_BYTES + dataBytes + followingBytes)
                .put(ascii("WAVE"));
        bytes.put(ascii("fmt ")).putInt(FMT_BYTES);
        bytes.putShort((short) format.tag()).putShort((short) channels);
        bytes.putInt(rate.hz()).putInt(rate.hz() * frameBytes());
        bytes.putShort((short) frameBytes()).putShort((short) (8 * format.sampleBytes()));
        bytes.putShort((short) 0);
        bytes.put(ascii("fact")).putInt(FACT_BYTES).putInt(dataBytes / frameBytes());
        bytes.put(ascii("data")).putInt(dataBytes);
        return bytes.flip();
    }

    private static byte[] ascii(String fourLetters) {
        return fourLetters.getBytes(StandardCharsets.US_ASCII);
    }
}
