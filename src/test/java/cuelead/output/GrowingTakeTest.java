package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GrowingTakeTest {
    private static final SampleRate RATE = new SampleRate(8_000);

    @TempDir
    private Path folder;

    private static float[] ramp(int from, int count) {
        float[] samples = new float[count];
        for (int i = 0; i < count; i++) {
            samples[i] = (from + i) / 32_768f;
        }
        return samples;
    }

    private static long framesIn(Path file) throws Exception {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(new File(file.toString()))) {
            assertEquals(RATE.hz(), in.getFormat().getSampleRate());
            assertEquals(1, in.getFormat().getChannels());
            return in.getFrameLength();
        }
    }

    @Test
    void itOpensWhileItGrowsAndIsNeverMoreThanASecondBehind() throws Exception {
        Path file = folder.resolve("take.wav");
        GrowingTake take = GrowingTake.begin(file, RATE, 0.0871);
        assertEquals(0, framesIn(file));
        for (int i = 0; i < 30; i++) {
            take.write(ramp(1_000 * i, 1_000), 0, 1_000);
            long behind = take.frames() - framesIn(file);
            assertTrue(behind >= 0 && behind < RATE.hz(), behind + " frames behind");
        }
        assertEquals(0.0871, RoundTripNote.seconds(file).getAsDouble(), 1e-9);
        // nothing is closed, as after a crash
        assertEquals(24_000 + 6_000, take.frames());
    }

    @Test
    void everySampleIsThereInItsPlace() throws Exception {
        Path file = folder.resolve("take.wav");
        try (GrowingTake take = GrowingTake.begin(file, RATE, 0)) {
            take.write(ramp(0, 9_000), 0, 9_000);
            take.write(ramp(8_990, 20), 10, 10);
            take.roundTrip(-0.0125);
        }
        assertEquals(9_010, framesIn(file));
        assertEquals(-0.0125, RoundTripNote.seconds(file).getAsDouble(), 1e-9);
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            byte[] bytes = in.readAllBytes();
            for (int i = 0; i < 9_010; i++) {
                assertEquals((short) i, (short) ((bytes[2 * i] & 0xFF) | bytes[2 * i + 1] << 8));
            }
        }
    }

    @Test
    void aFullDiskIsTellingAndWhatIsWrittenStaysReadable() throws Exception {
        Path file = folder.resolve("take.wav");
        GrowingTake take = GrowingTake.begin(file, RATE, 0, target -> new FullDisk(OpensChannel.ON_DISK.open(target)));
        take.write(new float[30_000], 0, 30_000);
        Refused full = assertThrows(Refused.class, () -> take.write(new float[30_000], 0, 30_000));
        assertEquals(
                "Cannot write " + file + ": the disk is full; make room or choose another folder.", full.getMessage());
        take.close();
        assertEquals(30_000, framesIn(file));
    }

    @Test
    void anOlderFileIsNotWrittenOver() throws Exception {
        Path file = Files.writeString(folder.resolve("take.wav"), "older");
        assertThrows(Refused.class, () -> GrowingTake.begin(file, RATE, 0));
        assertEquals("older", Files.readString(file));
        assertTrue(RoundTripNote.seconds(file).isEmpty());
        assertTrue(RoundTripNote.seconds(folder.resolve("none.wav")).isEmpty());
    }

    @Test
    void whatComesAfterClosingIsLeftOut() throws Exception {
        Path file = folder.resolve("take.wav");
        GrowingTake take = GrowingTake.begin(file, RATE, 0);
        take.write(ramp(0, 300), 0, 300);
        take.close();
        take.write(ramp(0, 300), 0, 300);
        take.close();
        assertEquals(300, framesIn(file));
    }
}
