package cuelead.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OtherKindsTest {
    /** The marks with which such files begin, as their formats' specifications give them. */
    @ParameterizedTest
    @CsvSource({
        "89 50 4E 47 0D 0A 1A 0A, picture",
        "FF D8 FF E0 00 10 4A 46, picture",
        "47 49 46 38 39 61, picture",
        "00 00 00 18 66 74 79 70 68 65 69 63, picture",
        "7B 5C 72 74 66 31, rich-text",
        "62 70 6C 69 73 74 30 30, web archive",
        "50 4B 03 04 14 00, archive and no Word document",
        "D0 CF 11 E0 A1 B1 1A E1, damaged",
        "25 50 44 46 2D 31 2E 37 0A, damaged"
    })
    void whatCannotBeReadIsSaidInASentence(String hex, String said) {
        byte[] bytes = new byte[64];
        String[] digits = hex.split(" ");
        for (int i = 0; i < digits.length; i++) {
            bytes[i] = (byte) Integer.parseInt(digits[i], 16);
        }
        String sentence = assertThrows(Refused.class, () -> DocumentFile.read("x.txt", bytes))
                .getMessage();
        assertTrue(sentence.startsWith("x.txt is") && sentence.contains(said) && sentence.endsWith("."), sentence);
        assertEquals(1, sentence.lines().count());
    }

    @Test
    void anOpenDocumentIsSaid() {
        byte[] bytes = "PK\3\4..........................mimetypeapplication/vnd.oasis.opendocument.textPK"
                .getBytes(StandardCharsets.ISO_8859_1);
        String sentence = assertThrows(Refused.class, () -> DocumentFile.read("x.odt", bytes))
                .getMessage();
        assertTrue(sentence.contains("OpenDocument"), sentence);
    }

    @Test
    void aSheetThatNamesATagIsNoWebPage() throws Refused {
        String sheet = "<p> is not how this begins\n";
        assertEquals(DocumentKind.WEB_PAGE, kind(sheet));
        assertEquals(DocumentKind.PLAIN_TEXT, kind("TITLE\n" + sheet));
        assertEquals(DocumentKind.PLAIN_TEXT, kind("<<< TITLE >>>\n1-2 Walk R, L"));
    }

    private static DocumentKind kind(String text) throws Refused {
        return DocumentFile.read("x.txt", text.getBytes(StandardCharsets.UTF_8)).kind();
    }

    /** Whatever is damaged in a document, it is read or refused. */
    @Property(tries = 60)
    void damageIsReadOrRefused(@ForAll @IntRange(max = 10_000) int seed) {
        Random random = new Random(seed);
        List<String> lines = List.of("TITLE", "1-2\tRock R, recover L");
        byte[] bytes = random.nextBoolean() ? Documents.word(lines) : Documents.pdf(List.of(Documents.down(lines, 50)));
        for (int i = 0; i < 20; i++) {
            bytes[4 + random.nextInt(bytes.length - 4)] = (byte) random.nextInt(256);
        }
        try {
            DocumentFile.read("x", bytes);
        } catch (Refused sentence) {
            assertTrue(sentence.getMessage().endsWith("."), sentence.getMessage());
        }
    }
}
