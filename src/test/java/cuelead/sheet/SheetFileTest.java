package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import cuelead.document.Documents;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetFileTest {
    private static final String ACCENTED = SheetFixtures.SHEET.replace("MOORING", "MOORING \u00c9T\u00c9 \u00bd");

    @TempDir
    private Path folder;

    @Test
    void aFileThatIsNotThere() {
        Path file = folder.resolve("none.txt");
        assertEquals("There is no file " + file + "; check its name and folder.", refusal(file));
    }

    @Test
    void aFolder() {
        assertEquals(folder + " is a folder; name the step sheet in it.", refusal(folder));
    }

    /** Whoever may read everything is not kept out by permissions. */
    @Test
    void aFileThatMayNotBeRead() throws IOException {
        Path file = Files.writeString(folder.resolve("locked.txt"), SheetFixtures.SHEET);
        assumeFalse(!file.toFile().setReadable(false) || Files.isReadable(file));
        assertEquals(file + " cannot be read; check that you may read it.", refusal(file));
    }

    @Test
    void tenMegabytesOfText() throws IOException {
        Path file = Files.writeString(folder.resolve("long.txt"), "1-2 Step R\n".repeat(10 << 20 >> 3));
        assertTrue(refusal(file).contains("is too large for a step sheet ("), refusal(file));
    }

    @Test
    void anEmptyFile() throws Exception {
        notASheet(new byte[0], "The file is empty.");
        notASheet(" \n\t\n".getBytes(StandardCharsets.UTF_8), "The file is empty.");
    }

    @Test
    void bytesThatAreNoText() throws Exception {
        byte[] noise = new byte[4000];
        new Random(7).nextBytes(noise);
        notASheet(noise, "This is not a text file, so no step sheet can be read from it.");
    }

    @Test
    void aPictureNamedTxt() throws Exception {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};
        assertTrue(refusal(Files.write(folder.resolve("picture.txt"), picture)).contains(" is a picture"));
    }

    /** The same dance is read from every kind of document, laid out as authors do. */
    @ParameterizedTest
    @ValueSource(strings = {"1_porch_light_ramble", "3_lantern_tide"})
    void everyKindOfDocumentIsTheSameDance(String name) throws Exception {
        List<String> lines = SampleSheetsTest.text(name + ".txt").lines().toList();
        List<String> table = lines.stream()
                .map(line -> line.replaceFirst("^([\\d&-]+)\\s+", "$1\t"))
                .toList();
        List<String> expected = SheetDump.rows(
                SheetReader.read("x", String.join("\n", lines)).dance().orElseThrow());
        for (byte[] bytes : List.of(
                Documents.pdf(List.of(Documents.down(lines, 40))),
                Documents.pdf(List.of(Documents.down(table, 40))),
                Documents.pdf(List.of(
                        Documents.down(lines.subList(0, 20), 40), Documents.down(lines.subList(20, lines.size()), 40))),
                Documents.word(lines),
                Documents.word(table),
                page("<br>", lines),
                page("<p>", lines))) {
            ReadSheet read = SheetFile.read(Files.write(folder.resolve("sheet.txt"), bytes));
            assertEquals(
                    String.join("\n", expected),
                    String.join("\n", SheetDump.rows(read.dance().orElseThrow())));
            assertEquals(List.of(), read.problems());
        }
    }

    private static byte[] page(String between, List<String> lines) {
        String text = String.join(between, lines).replace("&", "&amp;").replace(between, between + "\n");
        return ("<!DOCTYPE html><html><head><meta charset=utf-8></head><body>" + text).getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, ''",
        "UTF-8, \ufeff",
        "UTF-16LE, \ufeff",
        "UTF-16BE, \ufeff",
        "UTF-16LE, ''",
        "UTF-16BE, ''",
        "ISO-8859-1, ''",
        "windows-1252, ''"
    })
    void everyEncodingOfEditorsIsRead(String encoding, String mark) throws Exception {
        Path file = Files.write(folder.resolve("sheet.txt"), (mark + ACCENTED).getBytes(Charset.forName(encoding)));
        ReadSheet read = SheetFile.read(file);
        assertEquals(
                "MOORING \u00c9T\u00c9 \u00bd LINES",
                read.dance().orElseThrow().header().title());
        assertEquals(16, read.dance().orElseThrow().counts());
        assertTrue(read.problems().isEmpty(), read.problems().toString());
    }

    private void notASheet(byte[] bytes, String sentence) throws Exception {
        ReadSheet read = SheetFile.read(Files.write(folder.resolve("wrong.txt"), bytes));
        assertTrue(read.dance().isEmpty());
        assertEquals(1, read.problems().size());
        assertEquals(sentence, read.problems().get(0).sentence());
        assertTrue(read.problems().get(0).message().startsWith(folder.resolve("wrong.txt") + ": error: "));
    }

    private static String refusal(Path file) {
        return assertThrows(Refused.class, () -> SheetFile.read(file)).getMessage();
    }
}
