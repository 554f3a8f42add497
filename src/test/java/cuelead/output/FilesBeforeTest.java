package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesBeforeTest {
    @TempDir
    private Path temp;

    @Test
    void whatWasThereIsThereAgainAndWhatWasNotIsGone() throws Exception {
        Path changed = Files.write(temp.resolve("changed.wav"), new byte[] {1, 2, 3});
        Path deleted = Files.write(temp.resolve("deleted.wav"), new byte[] {4});
        Path made = temp.resolve("made.wav");
        FilesBefore before = FilesBefore.of(List.of(changed, deleted, made));
        Files.write(changed, new byte[] {9});
        Files.delete(deleted);
        Files.write(made, new byte[] {5});
        before.putBack();
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(changed));
        assertArrayEquals(new byte[] {4}, Files.readAllBytes(deleted));
        assertFalse(Files.exists(made));
    }

    @Test
    void whatCannotBeReadIsRefused() {
        assertThrows(Refused.class, () -> FilesBefore.of(List.of(temp)));
    }
}
