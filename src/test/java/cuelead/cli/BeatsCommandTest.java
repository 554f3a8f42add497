package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.song.BeatFile;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BeatsCommandTest {
    private static final Path DEMO = Bench.PROJECT.resolve("demo-songs/lamp-on-the-quay.mp3");

    @TempDir
    private Path temp;

    private Bench bench;
    private Path song;
    private Path beatFile;

    @BeforeEach
    void copyASongWithoutItsBeats() throws Exception {
        bench = Bench.withoutDevice(temp);
        song = Files.copy(DEMO, temp.resolve("song.mp3"));
        beatFile = temp.resolve("song.beats");
    }

    private Outcome done(String... arguments) {
        Outcome outcome = bench.run(arguments);
        assertEquals(0, outcome.exitCode(), outcome.err());
        return outcome;
    }

    private static BeatGrid read(Path file) throws Exception {
        return BeatFile.read(file).beats().orElseThrow();
    }

    /** Against the exact beats of the song, which were written when it was composed. */
    @Test
    void hearsTheBeatsOfASong() throws Exception {
        Outcome outcome = done("beats", song.toString());
        assertTrue(outcome.out().contains("104.0 beats a minute, steady, 4 to the bar"), outcome.out());
        BeatGrid heard = read(beatFile);
        BeatGrid exact = read(BeatFile.beside(DEMO));
        int hits = 0;
        for (int i = 0; i < exact.size(); i++) {
            double seconds = exact.beatSeconds(i);
            hits += Math.abs(heard.beatSeconds(heard.nearestBeat(seconds)) - seconds) < 0.035 ? 1 : 0;
        }
        assertTrue(hits >= 0.98 * exact.size(), hits + " of " + exact.size());
        assertTrue(heard.size() <= 1.02 * exact.size(), "too many beats: " + heard.size());
    }

    @Test
    void whatIsThereIsRead() throws Exception {
        Files.copy(BeatFile.beside(DEMO), beatFile);
        String before = Files.readString(beatFile);
        Outcome outcome = done("beats", song.toString());
        assertTrue(outcome.out().contains("104.0 beats a minute"), outcome.out());
        assertTrue(!outcome.err().contains("Listening"), outcome.err());
        assertEquals(before, Files.readString(beatFile));
    }

    @Test
    void anotherSongsBeatsAreNotTakenForThisSongs() throws Exception {
        done("beats", song.toString());
        byte[] before = Files.readAllBytes(beatFile);
        Path other = Files.copy(Bench.PROJECT.resolve("demo-songs/slack-water-waltz.mp3"), temp.resolve("other.mp3"));
        for (List<String> known : List.of(List.<String>of(), List.of("--again"))) {
            List<String> words = new ArrayList<>(List.of("beats", other.toString(), "-o", beatFile.toString()));
            words.addAll(known);
            Outcome outcome = bench.run(words.toArray(String[]::new));
            assertNotEquals(0, outcome.exitCode(), outcome.out());
            assertTrue(outcome.err().contains("another song (song.mp3, "), outcome.err());
        }
        assertArrayEquals(before, Files.readAllBytes(beatFile));
    }

    @Test
    void aRenamedSongKeepsItsBeatsAndAFileByHandIsDoubted() throws Exception {
        done("beats", song.toString());
        Path renamed = Files.move(song, temp.resolve("renamed.mp3"));
        Outcome outcome = done("beats", renamed.toString(), "-o", beatFile.toString());
        assertTrue(outcome.err().isEmpty(), outcome.err());
        Path byHand = Files.copy(BeatFile.beside(DEMO), temp.resolve("by-hand.beats"));
        outcome = done("beats", renamed.toString(), "-o", byHand.toString());
        assertTrue(outcome.err().contains("does not say whose beats"), outcome.err());
    }

    @Test
    void aCorrectionIsKept() throws Exception {
        Files.copy(BeatFile.beside(DEMO), beatFile);
        double second = read(beatFile).beatSeconds(1);
        done("beats", song.toString(), "--one-at", String.valueOf(second));
        BeatGrid corrected = read(beatFile);
        assertEquals(1, corrected.countInPhrase(1));
        assertTrue(Files.readString(beatFile).contains("# corrected: count 1 at"));
        Outcome again = bench.run("beats", song.toString(), "--again");
        assertEquals(1, again.exitCode());
        assertTrue(again.err().contains("corrected by hand"), again.err());
        assertEquals(corrected, read(beatFile));
    }

    @Test
    void tappingWithoutADeviceNamesTheOptionsThatPutBeatsRight() throws Exception {
        Files.copy(BeatFile.beside(DEMO), beatFile);
        bench.sitDownAtATerminal();
        Outcome outcome = bench.run("beats", song.toString(), "--tap");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("No device. Or put the beats right with options"), outcome.err());
        assertFalse(outcome.err().contains("render"), outcome.err());
    }

    @Test
    void clicksAreMixedOverTheSong() throws Exception {
        Files.copy(BeatFile.beside(DEMO), beatFile);
        Path click = temp.resolve("click.wav");
        done("beats", song.toString(), "--click", click.toString());
        try (var clicked = SongFile.open(click, Optional.empty())) {
            assertEquals(165, clicked.pcm().lengthSeconds(), 3);
        }
    }

    @Test
    void ofManySongsEachIsTold() throws Exception {
        Files.copy(BeatFile.beside(DEMO), beatFile);
        Path broken = Files.writeString(temp.resolve("broken.mp3"), "no sound");
        Outcome outcome = bench.run("beats", song.toString(), broken.toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.out().contains("song.mp3: 104.0 beats a minute"), outcome.out());
        assertTrue(outcome.out().contains("(known)"), outcome.out());
        assertTrue(outcome.err().contains("broken.mp3"), outcome.err());
    }

    /** What was heard is remembered, so that the second time nothing is listened to; no file is left by the song. */
    @Test
    void practiceHearsTheBeatsOfASongWithoutABeatFile() {
        Outcome first = done("plan", Bench.DEMO_SHEET, song.toString());
        assertTrue(first.err().contains("There is no beat file, so the beats are heard"), first.err());
        assertTrue(first.out().contains("Count 1 falls at 0:09."), first.out());
        assertTrue(Files.notExists(beatFile));
        Outcome second = done("plan", Bench.DEMO_SHEET, song.toString());
        assertTrue(!second.err().contains("are heard"), second.err());
        assertEquals(first.out(), second.out());
    }

    @Test
    void aStretchNeedsACorrection() {
        Outcome outcome = bench.run("beats", song.toString(), "--from", "10");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("--half-beat"), outcome.err());
    }
}
