package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProblemPrinterTest {
    @TempDir
    Path temp;

    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private final ProblemPrinter printer = new ProblemPrinter(new PrintStream(printed, true, StandardCharsets.UTF_8));

    @Test
    void theCaretStandsUnderTheColumn() {
        assertEquals(lines("    3-4 Walk fwrd", "             ^"), ProblemPrinter.excerpt("3-4 Walk fwrd", 10));
        assertEquals("    3-4 Walk fwrd", ProblemPrinter.excerpt("3-4 Walk fwrd", 0));
        assertEquals(lines("    end", "       ^"), ProblemPrinter.excerpt("end", 99));
    }

    @Test
    void aTabBeforeTheCaretStaysATab() {
        assertEquals(lines("    1-2\tHop", "       \t^"), ProblemPrinter.excerpt("1-2\tHop", 5));
    }

    @Test
    void aLongLineIsCutAroundTheCaret() {
        String line = "x".repeat(500) + "HERE" + "y".repeat(500);
        String[] shown = ProblemPrinter.excerpt(line, 501).split("\\R");
        assertTrue(shown[0].length() < 120, shown[0]);
        assertEquals('H', shown[0].charAt(shown[1].indexOf('^')));
    }

    @Test
    void aProblemIsToldWithItsLineAndOnlyOnce() throws Exception {
        Path sheet = Files.writeString(temp.resolve("sheet.txt"), "\ufeffTITLE\r\n1-2 Hop twice\r\n");
        Problem problem =
                new Problem(Severity.ERROR, "kind", sheet.toString(), 2, 5, "Nobody hops.", "Write \"step\".");
        printer.tellInFull(List.of(problem, problem));
        printer.tellInShort(List.of(problem));
        assertEquals(
                lines(sheet + ":2:5: error: Nobody hops. Write \"step\".", "    1-2 Hop twice", "        ^", ""),
                printed.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aFileThatIsGoneCostsOnlyItsLine() {
        String gone = temp.resolve("gone.txt").toString();
        printer.tellInFull(List.of(new Problem(Severity.WARNING, "kind", gone, 2, 5, "Odd.", "")));
        assertEquals(lines(gone + ":2:5: warning: Odd.", ""), printed.toString(StandardCharsets.UTF_8));
    }

    @Test
    void inShortTheFirstFewAreTold() {
        List<Problem> many = IntStream.rangeClosed(1, 8)
                .mapToObj(line -> new Problem(Severity.WARNING, "kind", "f", line, 0, "Odd.", ""))
                .toList();
        printer.tellInShort(many);
        String text = printed.toString(StandardCharsets.UTF_8);
        assertTrue(text.endsWith(lines("f:5: warning: Odd.", "3 more problems: cuelead check lists them all.", "")));
    }

    private static String lines(String... lines) {
        return String.join(System.lineSeparator(), lines);
    }
}
