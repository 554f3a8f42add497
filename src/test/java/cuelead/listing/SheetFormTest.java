package cuelead.listing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetNotes;
import cuelead.sheet.SheetReader;
import cuelead.sheet.SheetWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetFormTest {
    private static final Path SHEETS = Path.of("src", "test", "resources", "cuelead", "sheet");

    private static ReadSheet read(Path file) throws IOException {
        return SheetReader.read(file.toString(), Files.readString(file));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static List<String> words(String text) {
        return new ArrayList<>(Arrays.asList(text.strip().split("[\\s,]+")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1_porch_light_ramble.txt", "3_lantern_tide.txt", "6_crooked_fence.txt"})
    void theStepSheetHoldsEveryWordThatIsWritten(String name) throws IOException {
        ReadSheet read = read(SHEETS.resolve(name));
        Dance dance = read.dance().orElseThrow();
        List<String> printed = words(text(SheetForm.STEP_SHEET.pdf(dance, read.notes(), Paper.A4)));
        List<String> lost = words(SheetWriter.write(dance, read.notes()));
        printed.forEach(lost::remove);
        assertEquals(List.of(), lost);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1_porch_light_ramble.txt", "3_lantern_tide.txt", "6_crooked_fence.txt"})
    void theCallSheetHoldsEveryCallInOrder(String name) throws IOException {
        Dance dance = read(SHEETS.resolve(name)).dance().orElseThrow();
        List<String> printed = words(text(SheetForm.CALL_SHEET.pdf(dance, SheetNotes.NONE, Paper.LETTER)));
        int at = 0;
        for (ListedLine line : ListedDance.of(dance)) {
            if (line instanceof ListedLine.Counted counted) {
                for (String word : words(counted.call())) {
                    int next = printed.subList(at, printed.size()).indexOf(word);
                    assertTrue(next >= 0, word + " of " + counted + " in " + printed.subList(at, printed.size()));
                    at += next + 1;
                }
            }
        }
    }

    @Test
    void lettersThatTheFontDoesNotHaveAreStoodInFor() throws IOException {
        String strange = "\u4e2d\ud83d\ude00 Kvar\u0165 \uff21 \u200e tab\tLI\ufb01";
        Dance dance = SheetReader.read(
                        "",
                        strange + "\nCount: 4  Wall: 1\n\n[1-4] \u6b65\n"
                                + "1-4 Step R to side, touch L, step L to side, touch R  \"\u6b65, \ud83d\ude00\"\n")
                .dance()
                .orElseThrow();
        for (SheetForm form : SheetForm.values()) {
            String text = text(form.pdf(dance, SheetNotes.NONE, Paper.A4));
            assertTrue(text.contains("Kvar\u0165 A"), text);
            assertTrue(text.contains("\u25a1"), text);
        }
    }

    @Test
    void whereSomebodyTurnsCareIsAdvisedOnce() throws IOException {
        Dance turning = read(SHEETS.resolve("1_porch_light_ramble.txt")).dance().orElseThrow();
        Dance still = SheetReader.read("", "STILL\n\n1-4 Step R to side, touch L, step L to side, touch R\n")
                .dance()
                .orElseThrow();
        for (SheetForm form : SheetForm.values()) {
            assertEquals(2, text(form.pdf(turning, SheetNotes.NONE, Paper.A4)).split("only as fast").length);
            assertEquals(1, text(form.pdf(still, SheetNotes.NONE, Paper.A4)).split("only as fast").length);
        }
    }

    @Test
    void pagesAreNumbered() throws IOException {
        Dance dance = read(SHEETS.resolve("3_lantern_tide.txt")).dance().orElseThrow();
        byte[] pdf = SheetForm.CALL_SHEET.pdf(dance, SheetNotes.NONE, new Paper(420, 420));
        int pages = pages(pdf);
        assertTrue(pages > 2, pages + " pages");
        for (int page = 1; page <= pages; page++) {
            assertTrue(text(pdf).contains("page " + page + " of " + pages));
        }
    }

    @Test
    void paperIsThatOfTheCountry() {
        assertEquals(Paper.LETTER, Paper.of(Locale.US));
        assertEquals(Paper.A4, Paper.of(Locale.UK));
    }
}
