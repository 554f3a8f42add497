package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.report.Problem;
import cuelead.sheet.OneDance.Group;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Two parts of sixteen counts and their order, told in many wordings (common practice, no source). */
class PhrasedWordingsTest {
    private static final String HEAD = """
            Nettle Row
            Choreographer: Quill Underhay
            Phrased, 2 parts, intermediate
            Intro: 16 counts, weight on L
            """;
    private static final List<String> ORDERS = List.of(
            "Sequence: A, A, B, A, B, B",
            "Sequence: AAB ABB",
            "SEQUENCE\nA A B A B B",
            "Order: A-A-B-A-B-B",
            "Sequence - AAB, AB, B",
            "Phrasing: A/A/B/A/B/B",
            "The dance goes A, A, B, A, B, B",
            "Parts in this order: A A B A B B",
            "Seq.: A x2, B, A, B x2",
            "Sequence: A (twice) B A B (twice)",
            "Sequence: 2x A, B, A, 2 x B",
            "Pattern of the dance: AA B A BB",
            "Dance sequence: A, A, B, A, B and B",
            "Routine: A-A-B, A-B-B");
    private static final List<List<String>> HEADS = List.of(
            List.of("PART A\n", "[9-16]\n", "PART B\n", "[9-16]\n"),
            List.of("Part A (16 counts)\nSection 1\n", "Section 2\n", "Part B (16 counts)\nSection 1\n", "Section 2\n"),
            List.of("A1: VINES\n", "A2: ROCKS\n", "B1: CHAIR\n", "B2: BOX\n"),
            List.of("PART A - 16 COUNTS\n1-8 VINES\n", "9-16 ROCKS\n", "PART B - 16 COUNTS\n1-8 CHAIR\n", "9-16 BOX\n"),
            List.of("A\n[1-8] VINES\n", "[9-16] ROCKS\n", "B\n[1-8] CHAIR\n", "[9-16] BOX\n"),
            List.of("Section A\n", "\n", "Section B\n", "\n"),
            List.of("A: 16 counts\n", "", "B: 16 counts\n", ""),
            List.of("*** A ***\n", "\n", "*** B ***\n", "\n"),
            List.of("A-Part:\n", "\n", "B-Part:\n", "\n"),
            List.of("PHRASE A\n", "\n", "PHRASE B\n", "\n"),
            List.of("First part (A)\n", "\n", "Second part (B)\n", "\n"),
            List.of("Part A, 1st eight\n", "Part A, 2nd eight\n", "Part B, 1st eight\n", "Part B, 2nd eight\n"),
            List.of("A[1-8] Vines\n", "A[9-16] Rocks\n", "B[1-8] Chair\n", "B[9-16] Box\n"),
            List.of("Part A1 Vines\n", "Part A2 Rocks\n", "Part B1 Chair\n", "Part B2 Box\n"),
            List.of("A (1-8): Vines\n", "A (9-16): Rocks\n", "B (1-8): Chair\n", "B (9-16): Box\n"));

    static Stream<String> orders() {
        return ORDERS.stream();
    }

    static Stream<List<String>> heads() {
        return HEADS.stream();
    }

    @ParameterizedTest
    @MethodSource("orders")
    void orderAbove(String order) {
        assertParts(HEAD + order + "\n\n" + body(HEADS.get(0), 0));
    }

    @ParameterizedTest
    @MethodSource("orders")
    void orderBelow(String order) {
        assertParts(HEAD + "\n" + body(HEADS.get(0), 0) + "\n" + order + "\n");
    }

    @ParameterizedTest
    @MethodSource("heads")
    void countedFromOne(List<String> heads) {
        assertParts(HEAD + ORDERS.get(0) + "\n\n" + body(heads, 0));
    }

    @ParameterizedTest
    @MethodSource("heads")
    void countedThroughThePart(List<String> heads) {
        assertParts(HEAD + ORDERS.get(0) + "\n\n" + body(heads, 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Phrased, intermediate. Sequence: A, A, B, A, B, B",
                "Intermediate | 2 parts | Order: A-A-B-A-B-B",
                "Phrased; intro: 16 counts; sequence A A B A B B",
                "Intermediate, phrased - Phrasing: A/A/B/A/B/B"
            })
    void orderBehindOtherFacts(String line) {
        assertParts("Nettle Row\n" + line + "\nIntro: 16 counts, weight on L\n\n" + body(HEADS.get(0), 0));
    }

    /** A short line between the order and the parts names no part. */
    @ParameterizedTest
    @ValueSource(strings = {"Intro: 16 counts", "Intro 16", "Introduction: 16 counts"})
    void introBelowTheOrder(String intro) {
        assertParts(
                "Nettle Row\nPhrased, weight on L\n" + ORDERS.get(0) + "\n" + intro + "\n\n" + body(HEADS.get(0), 0));
    }

    @Test
    void withoutAnOrderPartsAreDancedAsWrittenAndItIsSaid() {
        ReadSheet read = SheetReader.read("nettle.txt", HEAD + "\n" + body(HEADS.get(0), 0));
        assertEquals(
                List.of("The sheet has the parts A, B, but does not say in which order they are danced."),
                read.problems().stream()
                        .filter(problem -> problem.kind().equals("no_sequence"))
                        .map(Problem::sentence)
                        .toList());
        assertEquals(List.of("A", "B"), read.dance().orElseThrow().sequence());
    }

    @Test
    void aPartThatIsNotThereIsToldAndNotDanced() {
        String order = "Sequence: A, A, B, C, B";
        ReadSheet read = SheetReader.read("nettle.txt", HEAD + order + "\n\n" + body(HEADS.get(0), 0));
        assertEquals(
                List.of("The sequence names \"C\", but the sheet has no such part or tag."),
                read.problems().stream()
                        .filter(problem -> problem.kind().equals("unknown_part"))
                        .map(Problem::sentence)
                        .toList());
        assertEquals(List.of("A", "A", "B", "B"), read.dance().orElseThrow().sequence());
    }

    @Test
    void aPartOfWhichOnlyTheHeadingIsThereIsToldAndNotDanced() {
        String body = body(HEADS.get(0), 0);
        String sheet = HEAD + "Sequence: A, B, A, B\n\n" + body.substring(0, body.indexOf("PART B")) + "PART B\n";
        ReadSheet read = SheetReader.read("nettle.txt", sheet);
        assertEquals(
                List.of("The sequence names \"B\", but the sheet has no such part or tag."),
                read.problems().stream().map(Problem::sentence).toList());
        Dance dance = read.dance().orElseThrow();
        assertEquals(List.of("A", "A"), dance.sequence());
        assertEquals(List.of(), DanceCheck.check(dance, "nettle.txt"));
    }

    /** @param runningOn eights by which the second section of a part is counted on */
    private static String body(List<String> heads, int runningOn) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < heads.size(); i++) {
            int eight = i % 2 * runningOn;
            UnaryOperator<Group> numbered = eight == 0 ? group -> group : group -> group.counted(eight);
            body.append(heads.get(i));
            OneDance.EIGHTS.get(i).groups().stream()
                    .map(numbered)
                    .forEach(group -> body.append(group.counts() + " " + group.steps() + "\n"));
            body.append("\n");
        }
        return body.toString();
    }

    private static void assertParts(String sheet) {
        ReadSheet read = SheetReader.read("nettle.txt", sheet);
        assertEquals(List.of(), Blamed.in(read), sheet);
        Dance dance = read.dance().orElseThrow();
        assertEquals(List.of("A", "A", "B", "A", "B", "B"), dance.sequence(), sheet);
        assertEquals(
                List.of("A 16", "B 16"),
                dance.parts().stream()
                        .map(part -> part.name() + " " + part.counts())
                        .toList(),
                sheet);
        List<Integer> steps = dance.parts().stream()
                .flatMap(part -> part.sections().stream())
                .map(section -> section.steps().size())
                .toList();
        assertEquals(IntStream.of(8, 10, 8, 8).boxed().toList(), steps, sheet);
    }
}
