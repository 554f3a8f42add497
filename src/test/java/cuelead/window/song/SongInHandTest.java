package cuelead.window.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.report.Refused;
import cuelead.sheet.SheetFile;
import cuelead.song.BeatFile;
import cuelead.song.BeatFinding;
import cuelead.song.Correction;
import cuelead.song.Hearing;
import cuelead.song.Hearing.Stretch;
import cuelead.song.KeptBeats;
import cuelead.time.BeatGrid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterProperty;
import net.jqwik.api.lifecycle.BeforeProperty;

/** Steps that put beats right, what is kept of them, and how they are taken back. */
class SongInHandTest {
    private static final Path BEATS = Path.of("demo-songs", "lamp-on-the-quay.beats");

    private Path folder;

    @BeforeProperty
    void open() throws IOException {
        folder = Files.createTempDirectory("cuelead-song");
    }

    @AfterProperty
    void close() throws IOException {
        Files.deleteIfExists(file());
        Files.delete(folder);
    }

    private Path file() {
        return folder.resolve("my-song.beats");
    }

    private SongInHand open(boolean isThere) throws Exception {
        Files.deleteIfExists(file());
        BeatFile.Reading reading = BeatFile.read(BEATS);
        if (isThere) {
            Files.copy(BEATS, file());
        }
        Hearing hearing = BeatFile.hearing(reading).orElseThrow();
        LoadedSong song = new LoadedSong(
                folder.resolve("my-song.mp3"),
                new BeatFinding.Found(hearing, reading.comments(), List.of()),
                new KeptBeats(file(), folder.resolve("elsewhere").resolve("1.beats")),
                170,
                List.of());
        Dance dance =
                SheetFile.read(Path.of("cues", "lamp-on-the-quay.txt")).dance().orElseThrow();
        return new SongInHand(song, Optional.of(dance));
    }

    /** A step that a user may make. */
    @FunctionalInterface
    interface Step {
        void make(SongInHand song) throws Refused;
    }

    @Provide
    Arbitrary<List<Step>> steps() {
        Arbitrary<Optional<Stretch>> within = Arbitraries.integers()
                .between(0, 12)
                .map(i -> i < 6 ? Optional.empty() : Optional.of(new Stretch(5.0 * i, 5.0 * i + 15)));
        Arbitrary<Step> correction = within.flatMap(
                where -> Arbitraries.of(Correction.values()).map(change -> song -> song.change(change, where)));
        Arbitrary<Step> one = within.flatMap(
                where -> Arbitraries.integers().between(0, 60).map(beat -> song -> song.oneAt(beat, where)));
        Arbitrary<Step> begin = Arbitraries.integers().between(0, 60).map(beat -> song -> song.beginAt(beat));
        return Arbitraries.oneOf(correction, one, begin).list().ofMinSize(1).ofMaxSize(5);
    }

    private record Seen(BeatGrid beats, List<Byte> file) {}

    private Seen seen(SongInHand song) throws IOException {
        List<Byte> bytes = new ArrayList<>();
        if (Files.exists(file())) {
            for (byte each : Files.readAllBytes(file())) {
                bytes.add(each);
            }
        }
        return new Seen(song.beats(), bytes);
    }

    /** All that was seen is seen again, backwards and then forwards, in the beats and in the file. */
    @Property(tries = 20)
    void whateverIsDoneCanBeTakenBackAndDoneAgain(@ForAll("steps") List<Step> steps, @ForAll boolean isThere)
            throws Exception {
        SongInHand song = open(isThere);
        List<Seen> states = new ArrayList<>(List.of(seen(song)));
        for (Step step : steps) {
            try {
                step.make(song);
                states.add(seen(song));
                assertEquals(Optional.of(song.beats()), rounded(BeatFile.read(file()), song.beats()));
            } catch (Refused tooFewBeats) {
                assertEquals(states.get(states.size() - 1), seen(song), "a step that is refused changes nothing");
            }
        }
        for (int i = states.size() - 2; i >= 0; i--) {
            assertTrue(song.takeBack());
            assertEquals(states.get(i), seen(song));
        }
        assertFalse(song.takeBack());
        assertEquals(isThere, Files.exists(file()));
        for (int i = 1; i < states.size(); i++) {
            assertTrue(song.doAgain());
            assertEquals(states.get(i), seen(song));
        }
        assertFalse(song.doAgain());
    }

    /** Files hold microseconds. */
    private static Optional<BeatGrid> rounded(BeatFile.Reading reading, BeatGrid beats) {
        return reading.beats()
                .filter(read -> BeatFile.print(read, List.of()).equals(BeatFile.print(beats, List.of())))
                .map(same -> beats);
    }

    @Property(tries = 1)
    void aStepThatCannotBeKeptIsNotMade() throws Exception {
        SongInHand song = open(true);
        byte[] others = "0.1\t1\n0.7\t2\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Files.write(file(), others);
        BeatGrid before = song.beats();
        assertThrows(Refused.class, () -> song.change(Correction.HALF_BEAT, Optional.empty()));
        assertEquals(before, song.beats());
        assertFalse(song.canTakeBack());
        assertArrayEquals(others, Files.readAllBytes(file()));
    }

    @Property(tries = 1)
    void theDanceBeginsWhereItIsSet() throws Exception {
        SongInHand song = open(true);
        assertEquals(16, song.timeline().orElseThrow().countOne().beatIndex());
        song.beginAt(20);
        assertEquals(20, song.timeline().orElseThrow().countOne().beatIndex());
        song.change(Correction.COUNT_LATER, Optional.empty());
        assertEquals(20, song.timeline().orElseThrow().countOne().beatIndex(), "it stays in the music");
        song.takeBack();
        song.takeBack();
        assertEquals(16, song.timeline().orElseThrow().countOne().beatIndex());
    }
}
