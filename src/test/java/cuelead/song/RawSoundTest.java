package cuelead.song;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * WAV and AIFF of every plain coding give the sine that was written, as exactly as their bits allow. The headers
 * are written here by the published layouts that {@link WavHeader} and {@link AiffHeader} name.
 */
class RawSoundTest {
    private static final int HZ = 8_000;
    private static final int FRAMES = 800;

    @TempDir
    private Path folder;

    @Test
    void wavOf8To64Bits() throws Exception {
        assertSine(wav(1, 8, (data, x) -> data.put((byte) (Math.round(x * 127) + 128))), 1.0 / 60);
        assertSine(wav(1, 16, (data, x) -> data.putShort((short) Math.round(x * 32_768))), 1e-4);
        assertSine(wav(1, 24, RawSoundTest::put24), 1e-6);
        assertSine(wav(1, 32, (data, x) -> data.putInt((int) Math.round(x * 0x1p31))), 1e-6);
        assertSine(wav(3, 32, (data, x) -> data.putFloat(x.floatValue())), 1e-6);
        assertSine(wav(3, 64, ByteBuffer::putDouble), 1e-6);
    }

    @Test
    void extensibleWav() throws Exception {
        byte[] plain = wav(1, 24, RawSoundTest::put24);
        ByteBuffer extensible = ByteBuffer.allocate(plain.length + 24).order(ByteOrder.LITTLE_ENDIAN);
        extensible.put(plain, 0, 16).putInt(40).putShort((short) 0xfffe).put(plain, 22, 14);
        extensible.putShort((short) 22).putShort((short) 24).putInt(3).putShort((short) 1);
        extensible.put(new byte[] {0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xaa, 0, 0x38, (byte) 0x9b, 0x71});
        extensible.put(plain, 36, plain.length - 36);
        assertSine(extensible.array(), 1e-6);
    }

    @Test
    void otherChunksAndOddSizesAreSteppedOver() throws Exception {
        byte[] plain = wav(1, 16, (data, x) -> data.putShort((short) Math.round(x * 32_768)));
        ByteBuffer more = ByteBuffer.allocate(plain.length + 12).order(ByteOrder.LITTLE_ENDIAN);
        more.put(plain, 0, 36).put("LIST".getBytes(ISO_8859_1)).putInt(3).put(new byte[4]);
        more.put(plain, 36, plain.length - 36);
        assertSine(more.array(), 1e-4);
    }

    @Test
    void aWavOfUnknownLengthGoesToItsEnd() throws Exception {
        byte[] piped = wav(1, 16, (data, x) -> data.putShort((short) Math.round(x * 32_768)));
        ByteBuffer.wrap(piped).putInt(40, -1);
        assertSine(piped, 1e-4);
    }

    @Test
    void aiffOf8To24Bits() throws Exception {
        assertSine(aiff("AIFF", "", 8, (data, x) -> data.put((byte) Math.round(x * 127))), 1.0 / 60);
        assertSine(aiff("AIFF", "", 16, (data, x) -> data.putShort((short) Math.round(x * 32_768))), 1e-4);
        assertSine(aiff("AIFF", "", 24, RawSoundTest::put24), 1e-6);
    }

    @Test
    void aifcOfPlainCodings() throws Exception {
        BiConsumer<ByteBuffer, Double> turned =
                (data, x) -> data.putShort(Short.reverseBytes((short) Math.round(x * 32_768)));
        assertSine(aiff("AIFC", "sowt", 16, turned), 1e-4);
        assertSine(aiff("AIFC", "NONE", 16, (data, x) -> data.putShort((short) Math.round(x * 32_768))), 1e-4);
        assertSine(aiff("AIFC", "fl32", 32, (data, x) -> data.putFloat(x.floatValue())), 1e-6);
    }

    private static void put24(ByteBuffer data, double x) {
        int value = (int) Math.round(x * 0x1p23);
        boolean bigEnd = data.order() == ByteOrder.BIG_ENDIAN;
        data.put((byte) (bigEnd ? value >> 16 : value)).put((byte) (value >> 8)).put((byte)
                (bigEnd ? value : value >> 16));
    }

    private static byte[] data(int bits, ByteOrder order, BiConsumer<ByteBuffer, Double> put) {
        ByteBuffer data = ByteBuffer.allocate(FRAMES * bits / 8).order(order);
        for (int i = 0; i < FRAMES; i++) {
            put.accept(data, Sounds.sine(HZ, i));
        }
        return data.array();
    }

    private static byte[] wav(int code, int bits, BiConsumer<ByteBuffer, Double> put) {
        return Sounds.wav(code, HZ, 1, bits, data(bits, ByteOrder.LITTLE_ENDIAN, put));
    }

    private static byte[] aiff(String form, String coding, int bits, BiConsumer<ByteBuffer, Double> put) {
        byte[] samples = data(bits, ByteOrder.BIG_ENDIAN, put);
        int commonBytes = coding.isEmpty() ? 18 : 24;
        ByteBuffer bytes = ByteBuffer.allocate(12 + 8 + commonBytes + 16 + samples.length);
        bytes.put("FORM".getBytes(ISO_8859_1)).putInt(bytes.capacity() - 8).put(form.getBytes(ISO_8859_1));
        bytes.put("COMM".getBytes(ISO_8859_1)).putInt(commonBytes).putShort((short) 1);
        bytes.putInt(FRAMES).putShort((short) bits);
        // 8,000 = 1.953125 x 2^12 as an 80-bit extended number
        bytes.putShort((short) (16_383 + 12)).putLong(8_000L << 51);
        if (!coding.isEmpty()) {
            bytes.put(coding.getBytes(ISO_8859_1)).putShort((short) 0);
        }
        bytes.put("SSND".getBytes(ISO_8859_1)).putInt(8 + samples.length).putLong(0);
        return bytes.put(samples).array();
    }

    private void assertSine(byte[] bytes, double tolerance) throws Exception {
        try (Song song = SongFile.open(Sounds.file(folder, "sine", bytes), Optional.empty())) {
            float[] stereo = Sounds.samples(song);
            assertEquals(HZ, song.pcm().rate().hz());
            assertEquals(2 * FRAMES, stereo.length);
            assertEquals(List.of(), song.problems());
            for (int i = 0; i < FRAMES; i++) {
                assertEquals(Sounds.sine(HZ, i), stereo[2 * i], tolerance, "left, frame " + i);
                assertEquals(stereo[2 * i], stereo[2 * i + 1], "frame " + i);
            }
        }
    }
}
