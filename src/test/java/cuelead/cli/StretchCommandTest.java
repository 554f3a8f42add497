package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.song.SongFile;
import cuelead.song.WholeSound;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StretchCommandTest {
    private static final SampleRate RATE = new SampleRate(22_050);
    private static final int LENGTH_FRAMES = 3 * 22_050 + 77;

    @TempDir
    private Path temp;

    private Bench bench;
    private Path song;
    private Path copy;

    /** A tone that is struck twice a second. */
    private static final class Taps implements Sound {
        private int next;

        @Override
        public int read(float[] interleaved, int frames) {
            int wanted = Math.min(frames, LENGTH_FRAMES - next);
            for (int i = 0; i < wanted; i++, next++) {
                double sinceTap = next % (RATE.hz() / 2) / (double) RATE.hz();
                float sample = (float) (0.4 * Math.exp(-20 * sinceTap) * Math.sin(3_000 * sinceTap));
                interleaved[2 * i] = sample;
                interleaved[2 * i + 1] = -sample;
            }
            return wanted;
        }
    }

    @BeforeEach
    void writeASong() throws Exception {
        bench = Bench.withoutDevice(temp);
        song = temp.resolve("song.wav");
        copy = temp.resolve("copy.wav");
        new WavFile().write(new Taps(), RATE, WavFormat.PCM_16, song);
    }

    private Outcome stretch(String speed) {
        return bench.run("stretch", song.toString(), copy.toString(), "--speed", speed);
    }

    @Test
    void aFileThatIsNoWavFileIsNotWrittenOver() throws Exception {
        copy = temp.resolve("sheet.txt");
        Files.writeString(copy, "my sheet");
        Outcome outcome = stretch("0.75");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("sheet.wav"), outcome.err());
        assertEquals("my sheet", Files.readString(copy));
    }

    @Test
    void theCopyHasTheSongsRateAndIsAsMuchLonger() throws Exception {
        Outcome outcome = stretch("0.75");
        assertEquals(0, outcome.exitCode(), outcome.err());
        WholeSound slow = SongFile.readAll(copy);
        assertEquals(RATE, slow.rate());
        assertEquals((LENGTH_FRAMES * 4 + 2) / 3, slow.monoSamples().length);
        assertTrue(outcome.err().contains("Wrote " + copy + " (0:04.0 for 0:03.0)."), outcome.err());
    }

    @Test
    void atTheOriginalSpeedTheCopyIsTheSong() throws Exception {
        assertEquals(0, stretch("1").exitCode());
        assertArrayEquals(Files.readAllBytes(song), Files.readAllBytes(copy));
    }

    @Test
    void equalSongsGiveEqualCopies() throws Exception {
        assertEquals(0, stretch("0.6").exitCode());
        byte[] first = Files.readAllBytes(copy);
        assertEquals(0, stretch("0.6").exitCode());
        assertArrayEquals(first, Files.readAllBytes(copy));
    }

    @Test
    void aSpeedOutOfRangeIsRefusedWithTheRange() {
        for (String speed : new String[] {"0.39", "1.26", "-1", "NaN", "half", ""}) {
            Outcome outcome = stretch(speed);
            assertEquals(2, outcome.exitCode());
            assertTrue(outcome.err().contains("\"" + speed + "\" is not a speed from 0.4 to 1.25"), outcome.err());
            assertFalse(Files.exists(copy));
        }
    }

    @Test
    void whatIsNoSongIsRefusedAndNothingIsWritten() throws Exception {
        song = Files.writeString(temp.resolve("song.txt"), "la la la");
        Outcome outcome = stretch("0.8");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().startsWith(song.toString()), outcome.err());
        assertFalse(Files.exists(copy));
    }

    @Test
    void theSongIsNotWrittenOver() throws Exception {
        byte[] before = Files.readAllBytes(song);
        copy = song;
        assertEquals(1, stretch("0.8").exitCode());
        assertArrayEquals(before, Files.readAllBytes(song));
    }

    @Test
    void onlyWavFilesAreWritten() {
        copy = temp.resolve("copy.mp3");
        Outcome outcome = stretch("0.8");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("copy.wav"), outcome.err());
    }
}
