package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Foot;
import cuelead.report.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures and local names of an instructor's own. */
class OwnFiguresTest {
    private static final OwnFigures OWN = OwnFigures.of("own.txt", """
            # mine
            chair dance = rock R fwd, recover L, rock R back, recover L
            harbour wave = vine
            half chair = rock L fwd, recover R
            """);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"Chair dance", "R chair dance", "chair dance right", "half chair R, rock R back, recover L"})
    void isReadAsItsWords(String words) {
        assertEquals(SheetDump.rows(read(SHEET)), SheetDump.rows(read(withLine(words))));
    }

    @Test
    void theOtherFootDancesTheMirrorImage() {
        String mirrored = withLine("Rock L fwd, recover R, rock L back, recover R");
        assertEquals(SheetDump.rows(read(mirrored)), SheetDump.rows(read(withLine("L chair dance"))));
    }

    @Test
    void anotherNameForAFigureOfTheTable() {
        assertEquals(SheetDump.rows(read(withLine("Vine R"))), SheetDump.rows(read(withLine("Harbour wave R"))));
    }

    /** A figure that is not understood is told once, where it is written, however often the sheet names it. */
    @Test
    void itsMistakesAreToldInItsFile() {
        OwnFigures odd = OwnFigures.of("own.txt", "# mine\nodd one = quonk R, quonk L");
        assertEquals(
                List.of("own.txt:2 own_figure"),
                odd.problems().stream()
                        .map(problem -> problem.file() + ":" + problem.line() + " " + problem.kind())
                        .toList());
        List<Problem> problems = SheetReader.read("sheet.txt", withLine("hold, odd one, hold"), odd)
                .problems();
        assertEquals(
                List.of("9 own_figure NOTE"),
                problems.stream()
                        .map(problem -> problem.line() + " " + problem.kind() + " " + problem.severity())
                        .toList());
    }

    /** Names are found whatever stands beside them in the file, and twice the same name is told. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "R wibble = walk R, L, R, touch L|0",
                "wibble (4 counts) = walk R, L, R, touch L|0",
                "wibble = 1-4 walk fwd R, L, R, touch L|0",
                "wibble = walk R, L, R, touch L#wibble = hold|1",
            })
    void namesAsTheyAreWritten(String file, int problems) {
        OwnFigures own = OwnFigures.of("own.txt", file.replace('#', '\n'));
        assertEquals(problems, own.problems().size(), own.problems().toString());
        Dance dance =
                SheetReader.read("sheet.txt", withLine("Wibble"), own).dance().orElseThrow();
        Dance spelt = SheetReader.read("sheet.txt", withLine("Walk R, L, R, touch L"), own)
                .dance()
                .orElseThrow();
        assertEquals(SheetDump.rows(spelt), SheetDump.rows(dance));
    }

    /** Their steps bear their name, with either foot, also where the sheet writes them out. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Chair dance|RIGHT",
                "L chair dance|LEFT",
                "Chair dance (L)|LEFT",
                "Rock L fwd, recover R, rock L back, recover R|LEFT",
            })
    void theirStepsBearTheirName(String words, Foot lead) {
        assertTrue(read(withLine(words)).parts().get(0).sections().stream()
                .flatMap(section -> section.figures().stream())
                .anyMatch(run -> run.figure().name().equals("chair dance") && run.lead() == lead));
    }

    /** Nothing but own figures and figures of the table. */
    @Test
    void aSheetOfNamesOnly() {
        OwnFigures own = OwnFigures.of("own.txt", "wibble = walk R, L, R, touch L");
        Dance dance = SheetReader.read("sheet.txt", "MINE\n1-4 wibble\n5-8 L vine touch\n9-12 R rocking chair\n", own)
                .dance()
                .orElseThrow();
        assertEquals(12, dance.counts());
    }

    @Test
    void aLineThatIsNone() {
        assertEquals(
                List.of("own.txt:2:1: error: This line is no figure of your own. "
                        + "Write it like \"ramble = step R to side, step L behind R\"."),
                OwnFigures.of("own.txt", "a = step R\njust words\n").problems().stream()
                        .map(Problem::message)
                        .toList());
    }

    private static String withLine(String words) {
        return SHEET.replace("Rock R fwd, recover L, rock R back, recover L", words);
    }

    private static Dance read(String text) {
        return SheetReader.read("sheet.txt", text, OWN).dance().orElseThrow();
    }
}
