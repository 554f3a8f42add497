package cuelead.document;

import static cuelead.document.Documents.down;
import static cuelead.document.Documents.pdf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.document.DocumentText.Line;
import cuelead.document.Documents.Placed;
import cuelead.report.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;

class PdfTextTest {
    private static final List<String> LEFT = List.of(
            "[1-8] VINES",
            "1-2 Step R to side, step L behind R",
            "3-4 Step R to side, touch L",
            "5-8 Repeat to the left");
    private static final List<String> RIGHT =
            List.of("[9-16] ROCKS", "1-2 Rock R fwd, recover L", "3-4 Rock R back, recover L", "5-8 Walk R, L, R, L");

    @Test
    void linesComeFromTopToBottomWhateverTheOrderInTheFile() throws Refused {
        List<Placed> texts = new ArrayList<>(down(LEFT, 50));
        Collections.reverse(texts);
        assertEquals(LEFT, lines(pdf(List.of(texts))));
    }

    @Test
    void aTableKeepsItsRowsAndTheSecondLineOfACellItsColumn() throws Refused {
        List<String> table = List.of(
                "COUNT\tSTEPS", "1-2\tStep R to side, step L", "\tbehind R", "3-4\tStep R to side, touch L beside R");
        assertEquals(table, lines(pdf(List.of(down(table, 50)))));
    }

    @Test
    void twoColumnsAreReadOneAfterTheOther() throws Refused {
        List<Placed> texts = new ArrayList<>(down(LEFT, 50));
        texts.addAll(down(RIGHT, 320));
        texts.add(new Placed("A TITLE THAT GOES OVER BOTH OF THE COLUMNS OF THIS PAGE, AND SO ON AND ON", 60, 30));
        List<String> read = lines(pdf(List.of(texts)));
        assertTrue(read.get(0).startsWith("A TITLE"), read.toString());
        assertEquals(Stream.concat(LEFT.stream(), RIGHT.stream()).toList(), read.subList(1, read.size()));
    }

    @Test
    void twoCountGroupsOnALineStayOnIt() throws Refused {
        List<String> lines = List.of("TITLE", "1-2 Walk R, L", "5-6 Rock R, L", "1-2 Walk R, L", "5-6 Rock R, L");
        List<String> next = List.of("", "3-4 Walk R, L", "7-8 Touch R, L", "3-4 Walk R, L", "7-8 Touch R, L");
        List<Placed> texts = new ArrayList<>(down(lines, 50));
        texts.addAll(down(next, 300));
        assertEquals(
                List.of("TITLE", "1-2 Walk R, L\t3-4 Walk R, L", "5-6 Rock R, L\t7-8 Touch R, L"),
                lines(pdf(List.of(texts))).subList(0, 3));
    }

    @Test
    void whatStandsOnEveryPageIsLeftOutAndPagesAreKnown() throws Refused {
        List<List<Placed>> pages = new ArrayList<>();
        for (int page = 1; page <= 2; page++) {
            List<Placed> texts = new ArrayList<>(down(page == 1 ? LEFT : RIGHT, 50));
            texts.add(new Placed("LAMPS", 50, 25));
            texts.add(new Placed("Tuesday class, sheet 4, page " + page + " of 2", 50, 800));
            texts.add(new Placed("" + page, 300, 830));
            pages.add(texts);
        }
        List<Line> lines = DocumentFile.read("x.pdf", pdf(pages)).lines();
        List<String> expected =
                Stream.of(List.of("LAMPS"), LEFT, RIGHT).flatMap(List::stream).toList();
        assertEquals(expected, lines.stream().map(Line::text).toList());
        assertEquals(1, lines.get(4).page());
        assertEquals(2, lines.get(5).page());
    }

    @Test
    void aWordBrokenAtTheEndOfALineIsWhole() throws Refused {
        List<String> lines =
                List.of("1-2 Step R to side, step L be-", "hind R", "3&4 Kick-", "ball-change R", "5 Step-", "ping L");
        assertEquals(
                List.of("1-2 Step R to side, step L behind", "R", "3&4 Kick-ball-change", "R", "5 Stepping", "L"),
                lines(pdf(List.of(down(lines, 50)))));
    }

    @Test
    void aPdfThatOnlyItsOwnerMayChangeIsRead() throws Exception {
        byte[] bytes = Documents.written(out -> {
            try (PDDocument open = Loader.loadPDF(pdf(List.of(down(LEFT, 50))))) {
                open.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()));
                open.save(out);
            }
        });
        assertEquals(LEFT, lines(bytes));
    }

    @Test
    void aPasswordIsSaid() {
        assertTrue(refusal(pdf(List.of(down(LEFT, 50)), "secret")).contains("locked with a password"));
    }

    @Test
    void picturesOnlyAreSaid() throws Exception {
        byte[] bytes = Documents.written(out -> {
            try (PDDocument empty = new PDDocument()) {
                empty.addPage(new PDPage());
                empty.save(out);
            }
        });
        assertTrue(refusal(bytes).contains("OCR"));
    }

    /** Cut off anywhere it is read as far as it goes, or refused in one sentence. */
    @Test
    void aBrokenPdfIsReadOrRefused() {
        byte[] whole = pdf(List.of(down(LEFT, 50)));
        int refused = 0;
        for (int length = 10; length < whole.length; length += 97) {
            try {
                DocumentFile.read("x.pdf", Arrays.copyOf(whole, length));
            } catch (Refused sentence) {
                refused++;
                assertTrue(sentence.getMessage().startsWith("x.pdf "), sentence.getMessage());
                assertTrue(sentence.getMessage().endsWith("."), sentence.getMessage());
            }
        }
        assertTrue(refused > 3, refused + " refused");
    }

    @Test
    void aBookIsRefused() {
        List<List<Placed>> pages = Collections.nCopies(41, down(LEFT, 50));
        assertTrue(refusal(pdf(pages)).contains("41 pages"));
    }

    private static List<String> lines(byte[] bytes) throws Refused {
        return DocumentFile.read("x.pdf", bytes).lines().stream()
                .map(Line::text)
                .toList();
    }

    private static String refusal(byte[] bytes) {
        return assertThrows(Refused.class, () -> DocumentFile.read("x.pdf", bytes))
                .getMessage();
    }
}
