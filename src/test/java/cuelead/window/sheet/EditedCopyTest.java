package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditedCopyTest {
    @TempDir
    private Path temp;

    private Path chosen() throws IOException {
        return Files.writeString(temp.resolve("my sheet.pdf"), "as it was");
    }

    private Path copies() {
        return temp.resolve("kept").resolve("sheets");
    }

    @Test
    void theChosenFileIsNeverWritten() throws Exception {
        Path chosen = chosen();
        EditedCopy copy = new EditedCopy(copies(), chosen, "text");
        assertFalse(copy.keep("text"));
        assertEquals(chosen, copy.file());
        assertFalse(Files.exists(copies()));
        assertTrue(copy.keep("text 2"));
        assertFalse(copy.keep("text 3"));
        assertEquals("as it was", Files.readString(chosen));
        assertEquals(copies().resolve("my sheet.txt"), copy.file());
        assertEquals("text 3", Files.readString(copy.file()));
    }

    @Test
    void anEarlierCopyStays() throws Exception {
        EditedCopy first = new EditedCopy(copies(), chosen(), "text");
        first.keep("one");
        EditedCopy second = new EditedCopy(copies(), chosen(), "text");
        second.keep("two");
        assertEquals("one", Files.readString(first.file()));
        assertEquals("two", Files.readString(second.file()));
        assertEquals(copies().resolve("my sheet-2.txt"), second.file());
    }

    @Test
    void aCopyThatIsOpenedAgainIsItsOwn() throws Exception {
        EditedCopy first = new EditedCopy(copies(), chosen(), "text");
        first.keep("one");
        EditedCopy again = new EditedCopy(copies(), first.file(), "one");
        assertFalse(again.keep("two"));
        assertEquals("two", Files.readString(first.file()));
        try (Stream<Path> files = Files.list(copies())) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void whatCannotBeWrittenIsToldAndTriedAgain() throws Exception {
        Files.writeString(temp.resolve("kept"), "in the way");
        EditedCopy copy = new EditedCopy(copies(), chosen(), "text");
        assertThrows(Refused.class, () -> copy.keep("one"));
        Files.delete(temp.resolve("kept"));
        assertTrue(copy.keep("one"));
        assertEquals("one", Files.readString(copy.file()));
    }
}
