package cuelead.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UserTextTest {
    private static final String TEXT = "section 1, walk\nSchrittfolge für zwei: ½";

    @TempDir
    private Path temp;

    @Test
    void everyUnicodeTextIsRead() throws Exception {
        for (Charset charset : new Charset[] {StandardCharsets.UTF_8, StandardCharsets.UTF_16}) {
            assertEquals(TEXT, UserText.read(file(TEXT.getBytes(charset)), "The lesson"), charset.name());
        }
        Path marked = file(("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_8));
        assertEquals(TEXT, UserText.read(marked, "The lesson"));
        Path littleEndian = file(("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_16LE));
        assertEquals(TEXT, UserText.read(littleEndian, "The lesson"));
        assertEquals("", UserText.read(file(new byte[0]), "The lesson"));
    }

    @Test
    void whatIsNoTextIsRefusedInOneSentence() throws Exception {
        assertRefused("this is a folder. Name a text file.", temp);
        assertRefused("there is no such file. Check its name and folder.", temp.resolve("none.txt"));
        assertRefused("this is no text file. Save it as plain text.", file(new byte[] {'a', 0, 'b'}));
        assertRefused(
                "this is no text file (UTF-8). Save it as plain text, UTF-8.",
                file("für".getBytes(StandardCharsets.ISO_8859_1)));
        assertRefused("it is far too long. Name the text file that you mean.", file(new byte[1_000_001]));
    }

    private Path file(byte[] bytes) throws Exception {
        return Files.write(temp.resolve("mine.txt"), bytes);
    }

    private static void assertRefused(String why, Path file) {
        Refused refused = assertThrows(Refused.class, () -> UserText.read(file, "The lesson"));
        assertEquals("The lesson in " + file + " cannot be read: " + why, refused.getMessage());
    }
}
