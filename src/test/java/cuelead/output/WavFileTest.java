package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are read back by the JDK's own reader. */
class WavFileTest {
    private static final SampleRate RATE = new SampleRate(44_100);

    @TempDir
    private Path folder;

    /** A rising line, different on both sides. */
    private static Sound ramp(int frames) {
        return new Sound() {
            private int next;

            @Override
            public int read(float[] interleaved, int wanted) {
                int got = Math.min(wanted, frames - next);
                for (int i = 0; i < got; i++, next++) {
                    interleaved[2 * i] = (float) next / frames;
                    interleaved[2 * i + 1] = -(float) next / frames;
                }
                return got;
            }
        };
    }

    private static ByteBuffer samplesOf(Path file, AudioFormat.Encoding encoding, int bits, int channels, int frames)
            throws Exception {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            assertEquals(encoding, in.getFormat().getEncoding());
            assertEquals(bits, in.getFormat().getSampleSizeInBits());
            assertEquals(channels, in.getFormat().getChannels());
            assertEquals(44_100, in.getFormat().getSampleRate());
            assertEquals(frames, in.getFrameLength());
            return ByteBuffer.wrap(in.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void floatsAreWrittenUnchanged() throws Exception {
        Path file = folder.resolve("stem.wav");
        new WavFile().write(ramp(20_000), RATE, WavFormat.FLOAT_32, file);
        ByteBuffer samples = samplesOf(file, AudioFormat.Encoding.PCM_FLOAT, 32, 2, 20_000);
        for (int i = 0; i < 20_000; i++) {
            assertEquals((float) i / 20_000, samples.getFloat());
            assertEquals(-(float) i / 20_000, samples.getFloat());
        }
        assertEquals(List.of("stem.wav"), names());
    }

    @Test
    void sixteenBitsAreRoundedWithDither() throws Exception {
        Path file = folder.resolve("mix.wav");
        new WavFile().write(ramp(20_000), RATE, WavFormat.PCM_16, file);
        ByteBuffer samples = samplesOf(file, AudioFormat.Encoding.PCM_SIGNED, 16, 2, 20_000);
        double errorSum = 0;
        double powerSum = 0;
        for (int i = 0; i < 20_000; i++) {
            double error = samples.getShort() - 32_768.0 * i / 20_000;
            samples.getShort();
            assertTrue(Math.abs(error) <= 1.5, "off by " + error + " steps at " + i);
            errorSum += error;
            powerSum += error * error;
        }
        // triangular dither makes the error's power a quarter of a step squared, its mean 0
        assertEquals(0, errorSum / 20_000, 0.02);
        assertEquals(0.25, powerSum / 20_000, 0.02);
    }

    @Test
    void equalSoundsGiveEqualFiles() throws Exception {
        new WavFile().write(ramp(9_000), RATE, WavFormat.PCM_16, folder.resolve("a.wav"));
        new WavFile().write(ramp(9_000), RATE, WavFormat.PCM_16, folder.resolve("b.wav"));
        assertEquals(-1, Files.mismatch(folder.resolve("a.wav"), folder.resolve("b.wav")));
    }

    @Test
    void aClipIsMono() throws Exception {
        float[] mono = {0.25f, -1, 1, 2};
        new WavFile().writeMono(mono, RATE, WavFormat.FLOAT_32, folder.resolve("clip.wav"));
        ByteBuffer samples = samplesOf(folder.resolve("clip.wav"), AudioFormat.Encoding.PCM_FLOAT, 32, 1, 4);
        float[] read = new float[4];
        samples.asFloatBuffer().get(read);
        assertArrayEquals(mono, read);
    }

    @Test
    void samplesBeyondFullScaleAreHeldThere() {
        TpdfDither dither = new TpdfDither();
        for (int i = 0; i < 100; i++) {
            assertEquals(Short.MAX_VALUE, dither.quantize(1.5f));
            assertEquals(Short.MIN_VALUE, dither.quantize(-1.5f));
        }
    }

    @Test
    void aFullDiskLeavesTheOldFileAndNothingElse() throws Exception {
        Path file = folder.resolve("mix.wav");
        Files.writeString(file, "an older file");
        WavFile full = new WavFile(path -> new FullDisk(OpensChannel.ON_DISK.open(path)));
        Refused refused = assertThrows(Refused.class, () -> full.write(ramp(100_000), RATE, WavFormat.FLOAT_32, file));
        assertEquals(
                "Cannot write " + file + ": the disk is full; make room or choose another folder.",
                refused.getMessage());
        assertEquals("an older file", Files.readString(file));
        assertEquals(List.of("mix.wav"), names());
    }

    @Test
    void aMissingFolderIsNamed() {
        Path file = folder.resolve("none").resolve("mix.wav");
        Refused refused = assertThrows(Refused.class, () -> new WavFile().write(ramp(9), RATE, WavFormat.PCM_16, file));
        assertEquals(
                "Cannot write " + file + ": there is no folder " + file.getParent()
                        + "; make it first or choose another.",
                refused.getMessage());
    }

    @Test
    void aFolderIsNotAFile() throws IOException {
        Refused refused =
                assertThrows(Refused.class, () -> new WavFile().write(ramp(9), RATE, WavFormat.PCM_16, folder));
        assertEquals(
                "Cannot write " + folder + ": that is a folder; add a file name such as mix.wav.",
                refused.getMessage());
        assertEquals(List.of(), names());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        Path notFolder = Files.writeString(folder.resolve("song.mp3"), "");
        Path file = notFolder.resolve("mix.wav");
        Refused refused = assertThrows(Refused.class, () -> new WavFile().write(ramp(9), RATE, WavFormat.PCM_16, file));
        assertEquals(
                "Cannot write " + file + ": " + notFolder + " is a file and not a folder; choose another place.",
                refused.getMessage());
    }

    @Test
    void aForbiddenFolderIsRefused() {
        WavFile forbidden = new WavFile(path -> {
            throw new AccessDeniedException(path.toString());
        });
        Path file = folder.resolve("mix.wav");
        Refused refused = assertThrows(Refused.class, () -> forbidden.write(ramp(9), RATE, WavFormat.PCM_16, file));
        assertEquals(
                "Cannot write " + file + ": you may not write into that folder; choose another one.",
                refused.getMessage());
    }

    @Test
    void anInterruptLeavesNothing() throws IOException {
        Sound interrupting = (interleaved, frames) -> {
            Thread.currentThread().interrupt();
            return frames;
        };
        assertThrows(
                InterruptedException.class,
                () -> new WavFile().write(interrupting, RATE, WavFormat.PCM_16, folder.resolve("mix.wav")));
        assertEquals(List.of(), names());
    }

    @Test
    void aBrokenSoundLeavesNothing() throws IOException {
        Sound broken = (interleaved, frames) -> {
            throw new IllegalStateException("broken");
        };
        assertThrows(
                IllegalStateException.class,
                () -> new WavFile().write(broken, RATE, WavFormat.PCM_16, folder.resolve("mix.wav")));
        assertEquals(List.of(), names());
    }
}
