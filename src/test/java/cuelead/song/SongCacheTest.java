package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sound.MusicPowers;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SongCacheTest {
    private static final SongHash SONG = new SongHash("5".repeat(64));
    private static final SongFacts FACTS = new SongFacts(
            new SampleRate(44_100),
            5_000_000,
            new SongLoudness(new MusicPowers(new float[] {0.1f, 0, 2e-9f}, new float[] {0.03f, 0, 1e-9f}), 0.97, -0.2),
            Optional.empty());
    private static final SongFacts WITH_BEATS = FACTS.withBeats(BeatGrid.steady(new Tempo(104), 2.3, 30, 4));

    @TempDir
    private Path folder;

    private Path place;
    private SongCache cache;

    @BeforeEach
    void openCache() {
        place = folder.resolve("cache");
        cache = new SongCache(place);
    }

    @Test
    void whatIsRememberedIsFound() {
        assertEquals(Optional.empty(), cache.find(SONG));
        assertEquals(Optional.empty(), cache.remember(SONG, FACTS));
        assertEquals(Optional.of(FACTS), cache.find(SONG));
        cache.remember(SONG, WITH_BEATS);
        assertEquals(Optional.of(WITH_BEATS), new SongCache(place).find(SONG));
        assertEquals(Optional.empty(), cache.find(new SongHash("6".repeat(64))));
    }

    @Test
    void onlyWholeFilesAreLeftBehind() throws Exception {
        cache.remember(SONG, FACTS);
        cache.remember(SONG, WITH_BEATS);
        try (Stream<Path> files = Files.list(place)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void aHalfWrittenFileCountsAsNotThere() throws Exception {
        cache.remember(SONG, WITH_BEATS);
        Path file = onlyFile();
        byte[] whole = Files.readAllBytes(file);
        for (int bytes = 0; bytes < whole.length; bytes += 7) {
            Files.write(file, Arrays.copyOf(whole, bytes));
            assertEquals(Optional.empty(), cache.find(SONG), bytes + " bytes");
        }
        cache.remember(SONG, FACTS);
        assertEquals(Optional.of(FACTS), cache.find(SONG));
    }

    @Test
    void anotherVersionCountsAsNotThere() throws Exception {
        byte[] bytes = FactsFormat.encode(FACTS);
        bytes[3]++;
        // Its check sum is right, as another version would write it.
        java.util.zip.CRC32 sum = new java.util.zip.CRC32();
        sum.update(bytes, 0, bytes.length - Long.BYTES);
        java.nio.ByteBuffer.wrap(bytes).putLong(bytes.length - Long.BYTES, sum.getValue());
        assertEquals(Optional.empty(), FactsFormat.decode(bytes));
    }

    @Property(tries = 300, seed = "20261125")
    void anyChangedByteCountsAsNotThere(@ForAll @IntRange(max = 520) int at, @ForAll byte value) throws Exception {
        byte[] bytes = FactsFormat.encode(WITH_BEATS);
        byte before = bytes[at];
        bytes[at] = value;
        assertEquals(before == value ? Optional.of(WITH_BEATS) : Optional.empty(), FactsFormat.decode(bytes));
    }

    @Test
    void whereItCannotBeWrittenThereIsANote() throws Exception {
        Files.write(place, new byte[1]);
        Problem note = cache.remember(SONG, FACTS).orElseThrow();
        assertEquals(
                place + ": note: What was measured about the song cannot be kept here and is measured again next time. "
                        + "Free some space on the disk, or see that the folder may be written to.",
                note.message());
        assertEquals(Optional.empty(), cache.find(SONG));
    }

    @Test
    void aSongIsKnownByItsContent() throws Exception {
        Path one = Files.write(folder.resolve("one.mp3"), new byte[] {'a', 'b', 'c'});
        Path two = Files.write(folder.resolve("two.mp3"), new byte[] {'a', 'b', 'c'});
        Path other = Files.write(folder.resolve("other.mp3"), new byte[] {'a', 'b', 'd'});
        // FIPS 180-2, appendix B.1
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                SongHash.of(one).hex());
        assertEquals(SongHash.of(one), SongHash.of(two));
        assertNotEquals(SongHash.of(one), SongHash.of(other));
        Path gone = folder.resolve("gone.mp3");
        assertEquals(
                gone + " is not there: look for a slip in its name, or give its whole path.",
                assertThrows(Refused.class, () -> SongHash.of(gone)).getMessage());
    }

    private Path onlyFile() throws Exception {
        try (Stream<Path> files = Files.list(place)) {
            List<Path> all = files.toList();
            assertTrue(all.size() == 1, all + "");
            return all.get(0);
        }
    }
}
