package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.report.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sheets whose numbers could be taken for something else: counts between the words of a paragraph, counts in brackets
 * behind each step beside degrees and times of the clock. What the header says of their length changes nothing in how
 * they are read.
 */
class WholeSheetsTest {
    private static final Path FOLDER = Path.of("src/test/resources/cuelead/sheet/whole");

    @ParameterizedTest
    @CsvSource({"kettle, 40, 4", "gravel, 64, 2"})
    void isReadWhole(String name, int counts, int walls) throws IOException {
        String sheet = Files.readString(FOLDER.resolve(name + ".txt"));
        assertEquals(List.of(), told(sheet));
        Dance dance = dance(sheet);
        assertEquals(counts, dance.counts());
        assertEquals(walls, dance.header().statedWalls().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "kettle, 40 counts, 32",
        "kettle, 40 counts, 48",
        "kettle, 40 counts, 64",
        "kettle, 40 counts, 36",
        "gravel, 64 Count, 32",
        "gravel, 64 Count, 48",
        "gravel, 64 Count, 60"
    })
    void aWrongLengthInTheHeaderIsToldAndNothingElse(String name, String stated, String other) throws IOException {
        String sheet = Files.readString(FOLDER.resolve(name + ".txt"));
        String wrong = sheet.replace(stated, other + stated.substring(2));
        assertEquals(1, told(wrong).size(), told(wrong)::toString);
        assertEquals(dance(sheet).parts(), dance(wrong).parts());
    }

    private static Dance dance(String sheet) {
        return SheetReader.read("sheet.txt", sheet).dance().orElseThrow();
    }

    private static List<String> told(String sheet) {
        ReadSheet read = SheetReader.read("sheet.txt", sheet);
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.addAll(DanceCheck.check(read.dance().orElseThrow(), "sheet.txt"));
        return problems.stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .map(Problem::message)
                .toList();
    }
}
