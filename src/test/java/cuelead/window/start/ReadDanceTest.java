package cuelead.window.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadDanceTest {
    @TempDir
    private Path temp;

    @Test
    void aSheetIsToldInASentence() {
        ReadDance demo = ReadDance.read(Path.of("cues", "lamp-on-the-quay.txt"));
        assertTrue(demo.isDance());
        assertEquals("32 counts, 4 walls, Beginner", demo.facts());
        assertEquals("demo-songs/lamp-on-the-quay.mp3", demo.song());
        assertEquals(OptionalDouble.of(104), demo.tempo());
        assertEquals(List.of(), demo.findings());
    }

    @Test
    void whatIsWrongIsToldWithItsLine() throws Exception {
        Path sheet = temp.resolve("short.txt");
        Files.writeString(
                sheet,
                "Short\nCount: 32  Wall: 4\n\n[1-8] Sides\n1-4 Step R to side, step L together, step R to side, touch L\n");
        ReadDance read = ReadDance.read(sheet);
        assertTrue(read.isDance());
        assertTrue(read.findings().stream().anyMatch(told -> told.startsWith("Line 2: ")), read.toString());
    }

    @Test
    void noSheetIsToldAndNotPractised() {
        ReadDance none = ReadDance.read(temp.resolve("none.txt"));
        assertFalse(none.isDance());
        assertEquals(1, none.findings().size());
    }
}
