package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of the figure table against what the glossaries say of it, which {@code glossaries.tsv} has with the codes
 * of its sources: when each action falls, with which foot, whether it takes the weight, and what all of them turn.
 */
class GlossaryTest {
    private static final Path FACTS = Path.of("src/test/resources/cuelead/dance/glossaries.tsv");
    private static final Set<String> CODES = Set.of(
            "NTA", "RAL01", "UPD", "ULG", "BNS", "RAYS", "PCL", "MMV", "FML", "D757", "SAM", "LDF", "TPE", "PLD", "DBD",
            "EVG", "EGS", "LDC", "STP", "TRB", "GSG", "NCL", "RTE", "IDTA", "CP", "MEM");

    static List<FigureRow> rows() {
        return Figures.standard().rows();
    }

    private static Map<String, String[]> facts() {
        try (Stream<String> lines = Files.lines(FACTS)) {
            Map<String, String[]> facts = new HashMap<>();
            lines.filter(line -> !line.startsWith("#") && !line.startsWith("id\t"))
                    .map(line -> line.split("\t", -1))
                    .forEach(cells -> facts.put(cells[0], cells));
            return facts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isDancedAsTheGlossariesHaveIt(FigureRow row) {
        String[] fact = facts().get(row.figure().id());
        assertTrue(fact != null, row.figure().id() + " has no fact with a source");
        assertEquals(
                List.of(fact[1], fact[2].replace("B", "-").replace("?", "-"), fact[3], fact[4]),
                List.of(
                        each(row, beat -> number(beat.offset().toDecimal())),
                        each(row, beat -> beat.foot().map(Foot::letter).orElse("-")),
                        each(row, beat -> beat.transfer().letter()),
                        String.valueOf(row.netTurn().degrees())),
                row.figure().id());
    }

    /** Where the lists say on which foot it ends, the last action that takes weight is of that foot. */
    @ParameterizedTest
    @MethodSource("rows")
    void endsOnTheFootThatTheGlossariesTell(FigureRow row) {
        String end = facts().get(row.figure().id())[5];
        List<Figure.Beat> takes = row.figure().pattern().stream()
                .filter(beat -> beat.foot().isPresent() && beat.transfer().takesWeight())
                .toList();
        if (Set.of("R", "L").contains(end) && !takes.isEmpty()) {
            assertEquals(end, takes.get(takes.size() - 1).foot().orElseThrow().letter());
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void namesItsSources(FigureRow row) {
        for (String code : facts().get(row.figure().id())[6].split(";")) {
            assertTrue(CODES.contains(code.strip()), row.figure().id() + ": " + code);
        }
    }

    @Test
    void noFactIsWithoutItsRow() {
        Set<String> ids = rows().stream().map(row -> row.figure().id()).collect(Collectors.toSet());
        assertEquals(ids, facts().keySet());
    }

    private static String each(FigureRow row, java.util.function.Function<Figure.Beat, String> cell) {
        return row.figure().pattern().stream().map(cell).collect(Collectors.joining("|"));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((int) value) : String.valueOf(value);
    }
}
