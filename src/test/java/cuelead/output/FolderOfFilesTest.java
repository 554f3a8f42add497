package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderOfFilesTest {
    private static final SampleRate RATE = new SampleRate(8_000);

    @TempDir
    Path temp;

    @Test
    void allFilesTakeTheirPlacesTogether() throws Exception {
        Path folder = temp.resolve("stems");
        try (FolderOfFiles files = FolderOfFiles.in(folder)) {
            files.addText("plan.csv", "word\r\n");
            files.addMono("clips/rock.wav", new float[80], RATE);
            assertEquals(List.of(), visible(folder));
            files.putInPlace();
        }
        assertEquals(List.of("clips", "plan.csv"), all(folder));
        assertEquals("word\r\n", Files.readString(folder.resolve("plan.csv")));
        assertTrue(Files.size(folder.resolve("clips/rock.wav")) >= 80 * Float.BYTES);
    }

    @Test
    void whatWasThereStaysWhenWritingFails() throws Exception {
        Files.writeString(temp.resolve("plan.csv"), "old");
        Files.createDirectory(temp.resolve("segs.csv"));
        try (FolderOfFiles files = FolderOfFiles.in(temp)) {
            files.addText("plan.csv", "new");
            files.addText("segs.csv", "new");
            Refused refused = assertThrows(Refused.class, files::putInPlace);
            assertTrue(refused.getMessage().contains("segs.csv is a folder"), refused.getMessage());
        }
        assertEquals("old", Files.readString(temp.resolve("plan.csv")));
        assertEquals(List.of("plan.csv", "segs.csv"), all(temp));
    }

    @Test
    void aFolderThatWasNotThereIsNotThereAfterAFailure() throws Exception {
        Path folder = temp.resolve("stems");
        try (FolderOfFiles files = FolderOfFiles.in(folder)) {
            files.addText("plan.csv", "new");
        }
        assertFalse(Files.exists(folder));
    }

    @Test
    void aPlaceThatIsNoFolderIsRefused() throws Exception {
        Path file = Files.writeString(temp.resolve("file"), "mine");
        Refused refused = assertThrows(Refused.class, () -> FolderOfFiles.in(file));
        assertEquals(
                "Cannot write into the folder " + file + ": " + file
                        + " is a file and not a folder; choose another place.",
                refused.getMessage());
        Path missing = temp.resolve("none").resolve("stems");
        refused = assertThrows(Refused.class, () -> FolderOfFiles.in(missing));
        assertTrue(refused.getMessage().contains("there is no folder " + temp.resolve("none")), refused.getMessage());
        assertEquals("mine", Files.readString(file));
    }

    private static List<String> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static List<String> visible(Path folder) throws IOException {
        return all(folder).stream().filter(name -> !name.startsWith(".")).toList();
    }
}
