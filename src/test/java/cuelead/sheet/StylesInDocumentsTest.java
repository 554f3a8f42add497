package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.document.DocumentFile;
import cuelead.document.Documents;
import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sheets in many styles are read from a document as from text, whatever is thought of them. */
class StylesInDocumentsTest {
    /**
     * Laid out by runs of spaces, drawn lines or page feet, which documents do not keep as they are: other lines are left
     * unread.
     */
    private static final List<String> SPACED = List.of("21_", "27_", "31_", "33_", "106_", "109_");

    /** Words broken at the line end are put together in a PDF, but never in a title of text. */
    private static final String BROKEN_TITLE = "72_";

    static List<Path> printed() throws IOException, URISyntaxException {
        return sheets().stream()
                .filter(file -> !file.getFileName().toString().startsWith(BROKEN_TITLE))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("printed")
    void aPdf(Path sheet) throws Exception {
        List<String> lines = Files.readAllLines(sheet).stream()
                .map(StylesInDocumentsTest::printable)
                .toList();
        assertSame(lines, Documents.pdf(List.of(Documents.down(lines, 40))));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aWordDocument(Path sheet) throws Exception {
        List<String> lines = Files.readAllLines(sheet);
        assertSame(lines, Documents.word(lines));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aWebPage(Path sheet) throws Exception {
        List<String> lines = Files.readAllLines(sheet);
        String inside = lines.stream()
                .map(line -> line.replace("&", "&amp;").replace("<", "&lt;").replace("  ", "&nbsp; "))
                .collect(Collectors.joining("<br>\n"));
        assertSame(lines, ("<!DOCTYPE html><body>" + inside).getBytes(StandardCharsets.UTF_8));
    }

    private static void assertSame(List<String> lines, byte[] document) throws Refused {
        ReadSheet asText = SheetReader.read("x", String.join("\n", lines));
        ReadSheet asDocument = SheetFile.read("x", DocumentFile.read("x", document));
        assertEquals(told(asText), told(asDocument));
    }

    private static String told(ReadSheet read) {
        List<String> told = new ArrayList<>();
        read.dance().ifPresent(dance -> {
            told.add(dance.header().title());
            told.addAll(SheetDump.rows(dance));
        });
        read.problems().stream().map(Problem::kind).sorted().forEach(told::add);
        return String.join("\n", told);
    }

    /** What the standard fonts of PDF cannot print is left out. */
    private static String printable(String line) {
        CharsetEncoder encoder = Charset.forName("windows-1252").newEncoder();
        return line.chars()
                .filter(c -> c != '\f' && encoder.canEncode((char) c))
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }

    static List<Path> sheets() throws IOException, URISyntaxException {
        Path styles = Path.of(StylesInDocumentsTest.class.getResource("styles").toURI());
        try (Stream<Path> files = Files.list(styles)) {
            return files.filter(file -> file.toString().endsWith(".txt"))
                    .filter(file -> SPACED.stream().noneMatch(file.getFileName().toString()::startsWith))
                    .sorted()
                    .toList();
        }
    }
}
