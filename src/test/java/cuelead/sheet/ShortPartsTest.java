package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.report.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts of a phrased dance that its order breaks off or repeats, in many wordings (common practice, no source). */
class ShortPartsTest {
    private static final String EIGHT = """
            1-4 Rock R forward, recover L, rock R back, recover L
            5-8 Rock R forward, recover L, rock R back, recover L
            """;

    private static ReadSheet read(String order) {
        return SheetReader.read(
                "nettle.txt",
                "Nettle Row\nPhrased, 2 parts, intermediate\nIntro: 16 counts, weight on L\n" + order + "\n\nPART A\n"
                        + EIGHT + "[9-16]\n" + EIGHT + "\nPART B\n" + EIGHT + "[9-16]\n" + EIGHT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sequence: A, A8, B",
                "Sequence: A, A(8), B",
                "Sequence: A, A (first 8 counts), B",
                "Sequence: A, A (8 counts), B",
                "Sequence: A, A [1-8], B",
                "Sequence: A, A (counts 1-8), B",
                "Sequence: A, first 8 counts of A, B",
                "Sequence: A, half A, B",
                "Sequence: A, A (only 8 counts), B",
                "Sequence: A, A* (only 8 counts), B",
                "Sequence: A-A(8)-B",
                "Sequence: A, A-8, B",
                "Sequence: A, A up to count 8, B",
                "Sequence: A, A (restart after 8), B",
                "Sequence: A, A (omit last 8), B",
                "Sequence: A (16), A (8 cts only), B (16)",
                "Sequence: A, A-, B\nA- is the first 8 counts of A"
            })
    void breaksOffTheSecondA(String order) {
        Dance dance = read(order).dance().orElseThrow();
        assertEquals(List.of("A", "A", "B"), dance.sequence(), order);
        assertEquals(
                List.of("2 after 8"),
                dance.restarts().stream()
                        .map(restart -> restart.wall() + " after " + restart.afterCount())
                        .toList(),
                order);
        assertEquals(List.of(), Blamed.in(read(order)), order);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sequence: A x 2, B",
                "Sequence: A x2, B",
                "Sequence: A (x2), B",
                "Sequence: 2 x A, B",
                "Sequence: A twice, B",
                "Sequence: A (twice), B (facing 6:00)",
                "Sequence: A (16), A (16), B (16)",
                "Sequence: A (verse 1), A (verse 2), B (chorus)"
            })
    void dancesAllOfThem(String order) {
        Dance dance = read(order).dance().orElseThrow();
        assertEquals(List.of("A", "A", "B"), dance.sequence(), order);
        assertEquals(List.of(), dance.restarts(), order);
        assertEquals(List.of(), Blamed.in(read(order)), order);
    }

    @Test
    void saysWhereItIsNotClearHowMuchIsDanced() {
        List<String> told = read("Sequence: A, A (last bit short), B").problems().stream()
                .map(Problem::sentence)
                .toList();
        assertTrue(
                told.contains("It is not clear how many counts of A are danced here; all of them are."),
                told::toString);
        List<String> marked = read("Sequence: A, A-, B").problems().stream()
                .map(Problem::sentence)
                .toList();
        assertTrue(
                marked.contains("A mark stands behind A, but it is not said what it means; all of it is danced."),
                marked::toString);
    }
}
