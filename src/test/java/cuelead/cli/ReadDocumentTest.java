package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.document.Documents;
import cuelead.report.Refused;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.StringSelection;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that are no text files, as the commands meet them. */
class ReadDocumentTest {
    private static final List<String> SHEET = List.of(
            "STEAM OVER THE KETTLE",
            "Count: 4   Wall: 1",
            "[1-4] SIDE, TOUCH",
            "1-2\tStep R to side, touch L beside R",
            "3-4\tStep L to side, froobles R beside L");

    @TempDir
    private Path folder;

    @Test
    void everyCommandOpensDocuments() throws IOException {
        Path pdf = Files.write(folder.resolve("steam.pdf"), pdf());
        Path word = Files.write(folder.resolve("steam.docx"), Documents.word(SHEET));
        for (Path sheet : List.of(pdf, word)) {
            assertTrue(bench().run("read", sheet.toString()).out().contains("STEAM OVER THE KETTLE"));
            assertTrue(bench().run("check", sheet.toString()).out().contains(sheet + ":5:"));
            assertTrue(bench().run("plan", sheet.toString()).out().startsWith("STEAM"));
        }
    }

    @Test
    void problemsShowTheLineAndSayHowLinesAreCounted() throws IOException {
        Path pdf = Files.write(folder.resolve("steam.pdf"), pdf());
        String err = bench().run("read", pdf.toString()).err();
        assertTrue(err.contains("    3-4\tStep L to side, froobles R beside L"), err);
        assertTrue(err.contains("Lines are counted in the text of " + pdf), err);
    }

    @Test
    void theTextItselfCanBeKept() throws IOException {
        Path pdf = Files.write(folder.resolve("steam.pdf"), pdf());
        Bench.Outcome text = bench().run("read", pdf.toString(), "--text");
        assertEquals(0, text.exitCode(), text.err());
        assertEquals(SHEET, text.out().lines().toList());
    }

    @Test
    void standardInputIsReadWhereItIsAskedFor() {
        Bench.Outcome read = bench().runReading(new ByteArrayInputStream(pdf()), "read", "-", "--tsv");
        assertTrue(read.out().contains("#title=STEAM OVER THE KETTLE"), read.err());
        assertTrue(read.err().contains("standard input:5:"), read.err());
    }

    @Test
    void aSheetThatCannotBeReadIsOneSentence() throws IOException {
        Path locked =
                Files.write(folder.resolve("locked.pdf"), Documents.pdf(List.of(Documents.down(SHEET, 40)), "secret"));
        for (String command : List.of("read", "check", "plan", "play")) {
            Bench.Outcome outcome = bench().run(command, locked.toString());
            assertEquals(1, outcome.exitCode());
            assertEquals("", outcome.out());
            assertEquals(1, outcome.err().lines().count(), outcome.err());
            assertTrue(outcome.err().contains("password"), outcome.err());
        }
    }

    @Test
    void whereThereIsNoDesktopTheClipboardIsSaidToBeMissing() {
        Bench.Outcome outcome = bench().run("read", "--clipboard");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().startsWith("There is no clipboard here"), outcome.err());
        assertEquals(1, outcome.err().lines().count(), outcome.err());
    }

    @Test
    void aSheetOrTheClipboardIsNamed() {
        assertEquals(2, bench().run("read").exitCode());
        assertEquals(2, bench().run("read", "x.txt", "--clipboard").exitCode());
    }

    @Test
    void theClipboardHoldsText() throws Refused {
        Clipboard clipboard = new Clipboard("test");
        assertThrows(Refused.class, () -> Clipping.of(clipboard));
        clipboard.setContents(new StringSelection(String.join("\n", SHEET)), null);
        assertEquals(String.join("\n", SHEET), Clipping.of(clipboard).text());
    }

    /** What is loaded for a text file must not slow the first sound. */
    @Test
    void aTextFileNeedsNoLibrary() throws Exception {
        Path sheet = Files.writeString(folder.resolve("steam.txt"), String.join("\n", SHEET), StandardCharsets.UTF_8);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(
                        java,
                        "-Xlog:class+load:stdout",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "cuelead.cli.Main",
                        "read",
                        sheet.toString())
                .redirectErrorStream(true)
                .start();
        String loaded = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        assertTrue(loaded.contains("cuelead.document.PlainText "), "the program did not run");
        for (String library : List.of(" org.apache.", " org.jsoup.", " cuelead.document.PdfText ", " java.awt.")) {
            assertFalse(loaded.contains(library), library + " was loaded");
        }
    }

    private static byte[] pdf() {
        return Documents.pdf(List.of(Documents.down(SHEET, 40)));
    }

    private Bench bench() {
        return Bench.withoutDevice(folder);
    }
}
