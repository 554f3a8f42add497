package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Rectangle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
    private static final Recent DANCE = new Recent("ONE", Path.of("one.txt"), Optional.empty());
    private static final Rectangle PLACE = new Rectangle(1, 2, 800, 600);

    @TempDir
    private Path temp;

    /** The window closes right behind the last note. */
    @Test
    void whatWasNotedLastIsThereTheNextTime() throws Exception {
        Path folder = temp.resolve("not/there/yet");
        Memory memory = new Memory(folder);
        memory.note(DANCE);
        memory.noteLook(false, true);
        memory.note(PLACE);
        memory.close();
        Session next = new Memory(folder).session();
        assertEquals(List.of(DANCE), next.recents());
        assertEquals(Optional.of(PLACE), next.window());
        assertEquals(List.of(false, true), List.of(next.isDark(), next.isStill()));
    }

    @Test
    void aPlaceThatCannotBeWrittenStopsNobody() throws Exception {
        Path file = Files.writeString(temp.resolve("file"), "not a folder");
        Memory memory = new Memory(file.resolve("kept"));
        memory.note(DANCE);
        memory.close();
        assertEquals(List.of(DANCE), memory.session().recents());
        assertEquals(Session.FIRST, new Memory(file.resolve("kept")).session());
    }
}
