package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TakeFolderTest {
    private static final SampleRate RATE = new SampleRate(8_000);

    @TempDir
    private Path temp;

    private Path words() {
        return temp.resolve("words");
    }

    private static float[] sound(float height) {
        float[] sound = new float[80_000];
        sound[1] = height;
        return sound;
    }

    private Set<String> files() throws IOException {
        try (var all = Files.walk(words())) {
            Set<String> names = new TreeSet<>();
            all.filter(Files::isRegularFile)
                    .forEach(file ->
                            names.add(words().relativize(file).toString().replace('\\', '/')));
            return names;
        }
    }

    @Test
    void takesAreNumberedAndNeverWrittenOver() throws Exception {
        TakeFolder folder = new TakeFolder(words());
        Path first = folder.keep("rock", sound(0.1f), RATE);
        byte[] firstBytes = Files.readAllBytes(first);
        Path second = folder.keep("rock", sound(0.2f), RATE);
        Path other = folder.keep("rock back", sound(0.3f), RATE);
        assertEquals(
                List.of("rock-1.wav", "rock-2.wav", "rock back-1.wav"),
                List.of(first, second, other).stream()
                        .map(file -> file.getFileName().toString())
                        .toList());
        assertArrayEquals(firstBytes, Files.readAllBytes(first));
    }

    @Test
    void theAcceptedTakeIsTheRecording() throws Exception {
        TakeFolder folder = new TakeFolder(words());
        Path first = folder.keep("rock", sound(0.1f), RATE);
        Path second = folder.keep("rock", sound(0.2f), RATE);
        Path rock = folder.accept(first, "rock", List.of());
        assertEquals(-1, Files.mismatch(first, rock));
        folder.accept(second, "rock", List.of(rock));
        assertEquals(-1, Files.mismatch(second, rock));
        assertEquals(new TreeSet<>(List.of("rock.wav", "takes/rock-1.wav", "takes/rock-2.wav")), files());
    }

    @Test
    void whatTheUserPutThereIsKept() throws Exception {
        TakeFolder folder = new TakeFolder(words());
        Path own = Files.write(words().resolve("Rock.mp3"), new byte[] {1, 2, 3});
        Path take = folder.keep("rock", sound(0.1f), RATE);
        folder.accept(take, "rock", List.of(own));
        assertEquals(new TreeSet<>(List.of("rock.wav", "takes/rock-1.wav", "takes/rock-2.mp3")), files());
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(words().resolve("takes/rock-2.mp3")));
    }

    @Test
    void aFullDiskCostsNothingThatWasThere() throws Exception {
        TakeFolder folder = new TakeFolder(words());
        Path take = folder.keep("rock", sound(0.1f), RATE);
        Path rock = folder.accept(take, "rock", List.of());
        byte[] before = Files.readAllBytes(rock);
        TakeFolder full = new TakeFolder(words(), file -> new FullDisk(OpensChannel.ON_DISK.open(file)));
        Refused refused = assertThrows(Refused.class, () -> full.keep("rock", sound(0.2f), RATE));
        assertTrue(refused.getMessage().contains("the disk is full"), refused.getMessage());
        assertThrows(Refused.class, () -> full.accept(take, "rock", List.of(rock)));
        assertArrayEquals(before, Files.readAllBytes(rock));
        assertEquals(new TreeSet<>(List.of("rock.wav", "takes/rock-1.wav")), files());
    }

    @Test
    void aFileWhereTheFolderShouldBeIsRefused() throws IOException {
        Files.createFile(words());
        Refused refused = assertThrows(Refused.class, () -> new TakeFolder(words()));
        assertTrue(refused.getMessage().contains(" is a file and not a folder"), refused.getMessage());
    }

    @Test
    void aFolderThatCannotBeMadeIsNotCalledAFile() throws IOException {
        Path below = Files.createFile(words()).resolve("my-voice");
        Refused refused = assertThrows(Refused.class, () -> new TakeFolder(below));
        assertEquals(
                "Cannot write into the folder " + below
                        + ": that folder is not there and cannot be made; choose another place.",
                refused.getMessage());
    }
}
