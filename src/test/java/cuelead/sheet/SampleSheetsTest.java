package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.report.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Three invented dances with their right answers, worked out by hand: foot, action, direction, turn, facing, weight
 * and transfer of every action; the third with eight planted mistakes.
 */
class SampleSheetsTest {
    private static final Set<String> SINGLE =
            Set.of("step_fwd", "step_back", "step_side", "point", "touch", "kick", "hold", "clap", "stomp", "together");

    @ParameterizedTest
    @ValueSource(strings = {"1_porch_light_ramble", "3_lantern_tide", "6_crooked_fence"})
    void everyActionIsRead(String name) {
        List<String> expected = new ArrayList<>();
        for (String line : text(name + ".expected.tsv").split("\n")) {
            String[] cells = line.split("\t");
            if (cells.length == 13 && !cells[0].equals("section")) {
                expected.add(String.join(
                        "\t", cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6], cells[8], cells[10],
                        cells[11]));
            }
        }
        List<String> read = SheetDump.rows(dance(name)).stream()
                .map(row -> row.substring(0, row.lastIndexOf('\t')))
                .toList();
        assertEquals(String.join("\n", expected), String.join("\n", read));
    }

    /** Figures of several actions; a single action stands alone. */
    @ParameterizedTest
    @ValueSource(strings = {"1_porch_light_ramble", "3_lantern_tide", "6_crooked_fence"})
    void figuresAreRecognised(String name) {
        List<String> rows = SheetDump.rows(dance(name));
        List<String> wrong = new ArrayList<>();
        int at = 0;
        for (String line : text(name + ".expected.tsv").split("\n")) {
            String[] cells = line.split("\t");
            if (cells.length == 13 && !cells[0].equals("section")) {
                String figure = rows.get(at).substring(rows.get(at).lastIndexOf('\t') + 1);
                String expected = SINGLE.contains(cells[12]) ? "" : cells[12];
                boolean same = figure.startsWith(expected) && figure.isEmpty() == expected.isEmpty();
                boolean lone = figure.isEmpty() && expected.equals("sway");
                if (!same && !lone) {
                    wrong.add(cells[0] + " " + cells[2] + ": " + cells[12] + " read as " + figure);
                }
                at++;
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void rightSheetsHaveNoProblem() {
        for (String name : List.of("1_porch_light_ramble", "3_lantern_tide")) {
            assertEquals(
                    List.of(), problems(name).stream().map(Problem::message).toList());
        }
    }

    @Test
    void allPlantedMistakesAreFoundAndNothingElse() {
        List<String> found = problems("6_crooked_fence").stream()
                .map(problem -> problem.line() + " " + problem.kind())
                .toList();
        assertEquals(
                List.of(
                                "2 wrong_walls",
                                "2 count_total",
                                "6 impossible_weight",
                                "11 missing_counts",
                                "15 wrong_clock",
                                "24 extra_count",
                                "27 restart_weight",
                                "27 restart_facing")
                        .stream()
                        .sorted()
                        .toList(),
                found.stream().sorted().toList());
    }

    private static List<Problem> problems(String name) {
        ReadSheet sheet = SheetReader.read(name + ".txt", text(name + ".txt"));
        return Stream.concat(
                        sheet.problems().stream(),
                        DanceCheck.check(sheet.dance().orElseThrow(), name + ".txt").stream())
                .toList();
    }

    private static Dance dance(String name) {
        return SheetReader.read(name + ".txt", text(name + ".txt")).dance().orElseThrow();
    }

    static String text(String resource) {
        try (var in = SampleSheetsTest.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
