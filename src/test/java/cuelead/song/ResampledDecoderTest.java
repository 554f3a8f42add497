package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A song that is opened at another rate is the same sound at the same times. */
class ResampledDecoderTest {
    private static final int FROM_HZ = 44_100;
    private static final int FRAMES = 30_001;
    /** Rounding to 16 bits alone leaves a sine at half of full scale 92 dB (6.02 x 16 + 1.76 - 6.02). */
    private static final double LEAST_SNR_DB = 88;

    @TempDir
    private Path folder;

    private float[] opened(int toHz) throws Exception {
        Path file = Sounds.file(folder, "sine.wav", Sounds.wav(FROM_HZ, 2, FRAMES));
        try (Song song = SongFile.open(file, Optional.of(new SampleRate(toHz)))) {
            assertEquals(toHz, song.pcm().rate().hz());
            return Sounds.samples(song);
        }
    }

    @ParameterizedTest
    @CsvSource({"48000, 32655", "96000, 65309", "22050, 15001", "44100, 30001", "32000, 21770"})
    void aSineStaysASineOfTheSameLength(int toHz, int frames) throws Exception {
        float[] stereo = opened(toHz);
        assertEquals(frames, stereo.length / 2);
        double signal = 0;
        double noise = 0;
        for (int i = toHz / 100; i < frames - toHz / 100; i++) {
            double wanted = Sounds.sine(toHz, i);
            signal += wanted * wanted;
            noise += (stereo[2 * i] - wanted) * (stereo[2 * i] - wanted);
            assertEquals(stereo[2 * i], stereo[2 * i + 1], 1e-7);
        }
        double snrDb = 10 * Math.log10(signal / noise);
        assertTrue(snrDb > LEAST_SNR_DB, "signal to noise " + snrDb + " dB");
    }

    @Test
    void theBlockSizeDoesNotMatter() throws Exception {
        Path file = Sounds.file(folder, "sine.wav", Sounds.wav(FROM_HZ, 2, FRAMES));
        float[] whole = opened(48_000);
        for (int block : new int[] {1, 77, 5_000, 40_000}) {
            Findings findings = new Findings("sine.wav");
            try (Decoder decoder =
                    new ResampledDecoder(DecoderChoice.open(file, Limits.of(60), findings), new SampleRate(48_000))) {
                assertArrayEquals(whole, inBlocks(decoder, block, whole.length), "blocks of " + block);
            }
        }
    }

    private static float[] inBlocks(Decoder decoder, int block, int samples) throws Exception {
        float[] all = new float[samples + 2 * block];
        float[] one = new float[2 * block];
        int done = 0;
        for (int got = decoder.read(one, block); got > 0; got = decoder.read(one, block)) {
            System.arraycopy(one, 0, all, 2 * done, 2 * got);
            done += got;
        }
        return Arrays.copyOf(all, 2 * done);
    }
}
