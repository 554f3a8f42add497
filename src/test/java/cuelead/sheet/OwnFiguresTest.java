package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
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

    /** A problem stands where the name stood. */
    @Test
    void problemsStandAtTheName() {
        OwnFigures odd = OwnFigures.of("own.txt", "odd one = quonk R, quonk L");
        List<Problem> problems = SheetReader.read("sheet.txt", withLine("hold, odd one, hold"), odd)
                .problems();
        assertEquals(
                "9:11 unread",
                problems.get(0).line() + ":" + problems.get(0).column() + " "
                        + problems.get(0).kind());
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
