package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.song.BeatFile;
import cuelead.song.DanceBegin;
import cuelead.song.SongFile;
import cuelead.song.WholeSound;
import cuelead.sound.Sound;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        assertTrue(outcome.err().contains(".wav"), outcome.err());
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
        for (String name : new String[] {"copy.wav", "copy.flac"}) {
            copy = temp.resolve(name);
            assertEquals(0, stretch("1").exitCode());
            assertArrayEquals(
                    SongFile.readAll(song).monoSamples(), SongFile.readAll(copy).monoSamples(), name);
        }
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

    /** Beats that stand in no file are not guessed where three seconds of taps are too little to hear any. */
    @Test
    void aSongWithoutABeatIsCopiedWithoutABeatFile() {
        Outcome outcome = stretch("0.8");
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.err().contains("the copy gets no beat file"), outcome.err());
        assertTrue(Files.exists(copy));
        assertFalse(Files.exists(temp.resolve("copy.beats")));
    }

    private void writeBeats() throws Exception {
        Files.writeString(temp.resolve("song.beats"), "0.1\t1\t1\n0.6\t2\t2\n1.1\t1\n1.7\t2\n2.2\t1\n");
    }

    /** A beat at t is heard at t / 0.8 in the copy, to the microsecond that the file has. */
    @Test
    void theBeatsOfTheCopyAreThoseOfTheSong() throws Exception {
        writeBeats();
        Outcome outcome = stretch("0.8");
        assertEquals(0, outcome.exitCode(), outcome.err());
        BeatFile.Reading reading = BeatFile.read(temp.resolve("copy.beats"));
        BeatGrid beats = reading.beats().orElseThrow();
        double[] song = {0.1, 0.6, 1.1, 1.7, 2.2};
        assertEquals(song.length, beats.size());
        for (int i = 0; i < song.length; i++) {
            assertEquals(song[i] / 0.8, beats.beatSeconds(i), 1e-6);
            assertEquals(1 + i % 2, beats.beatInBar(i));
        }
        assertEquals(2, beats.countInPhrase(1));
        assertTrue(outcome.err().contains("Its beats are in " + temp.resolve("copy.beats")), outcome.err());
    }

    @Test
    void dancesBeginInTheCopyAtTheBeatWhereTheyBeginInTheSong() throws Exception {
        Path beats = temp.resolve("song.beats");
        Files.writeString(beats, "# count 1 at 0.600 of Ramble\n0.1\t1\t1\n0.6\t2\t2\n1.1\t1\n1.7\t2\n2.2\t1\n");
        assertEquals(0, stretch("0.8").exitCode());
        List<String> comments = BeatFile.read(temp.resolve("copy.beats")).comments();
        assertEquals(0.75, DanceBegin.of("Ramble", comments).orElseThrow(), 1e-3);
    }

    @Test
    void itsOwnBeatFileIsWrittenAnewButNotOneThatAUserChanged() throws Exception {
        writeBeats();
        Path beats = temp.resolve("copy.beats");
        assertEquals(0, stretch("0.8").exitCode());
        assertEquals(0, stretch("0.5").exitCode());
        assertEquals(4.4, BeatFile.read(beats).beats().orElseThrow().beatSeconds(4), 1e-6);
        String changed = Files.readString(beats).replace("4.400000", "4.300000");
        Files.writeString(beats, changed);
        byte[] before = Files.readAllBytes(copy);
        Outcome outcome = stretch("0.9");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("by hand"), outcome.err());
        assertEquals(changed, Files.readString(beats));
        assertArrayEquals(before, Files.readAllBytes(copy));
    }

    @Test
    void aCopyThatWouldShareTheBeatFileOfItsSongIsRefused() throws Exception {
        writeBeats();
        copy = temp.resolve("song.flac");
        Outcome outcome = stretch("0.8");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("song-slow"), outcome.err());
        assertFalse(Files.exists(copy));
    }

    @Test
    void theEndingChoosesTheFormatAndPlayersSeeTitleAndTempo() throws Exception {
        writeBeats();
        for (String name : new String[] {"copy.wav", "copy.flac", "copy.mp3"}) {
            copy = temp.resolve(name);
            Outcome outcome = stretch("0.75");
            assertEquals(0, outcome.exitCode(), outcome.err());
            assertEquals((LENGTH_FRAMES * 4 + 2) / 3, SongFile.readAll(copy).monoSamples().length, name);
            String bytes = Files.readString(copy, StandardCharsets.ISO_8859_1);
            assertTrue(bytes.contains("song at 75 %"), name);
            // beats are 0.5 s apart: 120 a minute, of which three quarters
            assertTrue(bytes.contains("90"), name);
            Files.delete(temp.resolve("copy.beats"));
        }
    }

    @Test
    void whatIsNoTrackIsNotWritten() {
        copy = temp.resolve("copy.ogg");
        Outcome outcome = stretch("0.8");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains(".wav, .flac or .mp3"), outcome.err());
    }
}
