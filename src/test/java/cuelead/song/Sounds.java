package cuelead.song;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import cuelead.sound.Pcm;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;

/** Test sounds: those kept as files, and WAV files made on the spot. */
final class Sounds {
    private Sounds() {}

    static byte[] resource(String name) {
        try (InputStream in = Sounds.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Path file(Path folder, String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    /** A sine of 441 Hz at half of full scale, the same on each channel, 16 bits. */
    static byte[] wav(int hz, int channels, int frames) {
        ByteBuffer data = ByteBuffer.allocate(2 * channels * frames).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < frames; i++) {
            for (int c = 0; c < channels; c++) {
                data.putShort((short) Math.round(32_768 * sine(hz, i)));
            }
        }
        return wav(1, hz, channels, 16, data.array());
    }

    static double sine(int hz, long frame) {
        return 0.5 * Math.sin(2 * Math.PI * 441 * frame / hz);
    }

    static byte[] wav(int code, int hz, int channels, int bits, byte[] data) {
        return header(code, hz, channels, bits, data.length).put(data).array();
    }

    /** A header that promises so many bytes, with room for them. */
    private static ByteBuffer header(int code, int hz, int channels, int bits, int dataBytes) {
        int frameBytes = channels * bits / 8;
        return ByteBuffer.allocate(44 + dataBytes)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put("RIFF".getBytes(ISO_8859_1))
                .putInt(36 + dataBytes)
                .put("WAVEfmt ".getBytes(ISO_8859_1))
                .putInt(16)
                .putShort((short) code)
                .putShort((short) channels)
                .putInt(hz)
                .putInt(hz * frameBytes)
                .putShort((short) frameBytes)
                .putShort((short) bits)
                .put("data".getBytes(ISO_8859_1))
                .putInt(dataBytes);
    }

    /** All frames, once they are loaded. */
    static float[] samples(Song song) {
        song.loaded().join();
        return samples(song.pcm());
    }

    static float[] samples(Pcm pcm) {
        int frames = Math.toIntExact(pcm.lengthFrames());
        float[] stereo = new float[2 * frames];
        pcm.copy(0, stereo, frames);
        return stereo;
    }

    static Pcm pcm(SampleRate rate, float[] stereo) {
        Pcm pcm = new Pcm(rate, stereo.length / 2);
        pcm.append(stereo, stereo.length / 2);
        pcm.finish();
        return pcm;
    }
}
