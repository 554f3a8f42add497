package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpokenSheetsTest {
    @TempDir
    private Path folder;

    @Test
    void aSheetIsKnownByWhatItHolds() throws IOException {
        SpokenSheets spoken = new SpokenSheets(folder.resolve("words").resolve("sheets"));
        Path sheet = Files.writeString(folder.resolve("sheet.txt"), "1-2 Walk right, left");
        Path same = Files.copy(sheet, folder.resolve("same.txt"));
        assertFalse(spoken.has(sheet));
        spoken.note(sheet);
        spoken.note(same);
        assertTrue(spoken.has(sheet));
        assertTrue(spoken.has(same));
        Files.writeString(sheet, "1-2 Walk left, right");
        assertFalse(spoken.has(sheet));
    }

    @Test
    void aMissingSheetOrAFolderThatCannotBeIsNoTrouble() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet.txt"), "1-2 Walk right, left");
        SpokenSheets nowhere = new SpokenSheets(file.resolve("sheets"));
        nowhere.note(file);
        assertFalse(nowhere.has(file));
        assertFalse(nowhere.has(folder.resolve("gone.txt")));
        assertEquals("1-2 Walk right, left", Files.readString(file));
    }
}
