package cuelead.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.document.DocumentText.Line;
import cuelead.report.Refused;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class OldWordTextTest {
    private static final int FLAGS = 0x0b;
    private static final int VERSION = 0x02;
    private static final byte[] SHEET =
            OldWordFile.of(List.of("MOORING LINES", "1-2\tRock R, recover L\u000b3-4 Walk R, L", "5-8 Turn \u00bd R"));

    @Test
    void paragraphsAndSoftBreaks() throws Refused {
        assertEquals(
                List.of("MOORING LINES", "1-2\tRock R, recover L", "3-4 Walk R, L", "5-8 Turn \u00bd R"),
                DocumentFile.read("x.doc", SHEET).lines().stream()
                        .map(Line::text)
                        .toList());
    }

    /** The bit fEncrypted ([MS-DOC] 2.5.2). */
    @Test
    void aPasswordIsSaid() {
        assertTrue(refusal(changed(FLAGS, 0x03)).contains("locked with a password"));
    }

    /** The nFib of Word 95 is 104 (0x68). */
    @Test
    void anOlderWordIsSaid() {
        assertTrue(refusal(changed(VERSION, 0x65)).contains("older than 97"));
    }

    @Test
    void aBrokenDocumentIsReadOrRefused() {
        int refused = 0;
        for (int length = 600; length < SHEET.length; length += 700) {
            try {
                DocumentFile.read("x.doc", Arrays.copyOf(SHEET, length));
            } catch (Refused sentence) {
                refused++;
                assertTrue(sentence.getMessage().startsWith("x.doc "), sentence.getMessage());
            }
        }
        assertTrue(refused > 5, refused + " refused");
    }

    /** With another byte in the head of the stream that begins with the mark of Word documents. */
    private static byte[] changed(int offset, int value) {
        byte[] bytes = SHEET.clone();
        for (int i = 512; i < bytes.length; i += 512) {
            if ((bytes[i] & 0xff) == 0xec && (bytes[i + 1] & 0xff) == 0xa5) {
                bytes[i + offset] = (byte) value;
            }
        }
        return bytes;
    }

    private static String refusal(byte[] bytes) {
        return assertThrows(Refused.class, () -> DocumentFile.read("x.doc", bytes))
                .getMessage();
    }
}
