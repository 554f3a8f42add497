package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Claims;
import cuelead.dance.Dance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a sheet says in so many words is not lost when it is written anew. */
class KeptWhenWrittenTest {
    private static ReadSheet read(String text) {
        return SheetReader.read("sheet.txt", text);
    }

    private static String written(String text) {
        ReadSheet read = read(text);
        return SheetWriter.write(read.dance().orElseThrow(), read.notes());
    }

    private static String eight(String firstCounts) {
        return "TIDE MARK\n\n[1-8] DRIFT\n1-2 " + firstCounts
                + "\n3-4 Step L forward, hold\n5-6 Step R back, hold\n7-8 Step L beside R, hold\n";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Step R back, sweep L from front to back   | sweep L from front to back | front-to-back",
                "Step R back, sweep L front to back        | sweep L from front to back | front-to-back",
                "Step R behind L, sweep L from front round to back | sweep L from front to back | front-to-back",
                "Step R forward, sweep L from back to front | sweep L from back to front | back-to-front",
                "Step R forward, L sweep back to front     | sweep L from back to front | back-to-front",
                "Step R forward, hook L across R           | hook L across R | over-shin",
                "Step R forward, hook L in front of R      | hook L across R | over-shin",
                "Step R forward, hook L behind R           | hook L behind R | behind"
            })
    void theWayOfSweepsAndHooks(String counts, String words, String direction) {
        String written = written(eight(counts));
        assertTrue(written.contains(words), written);
        List<String> rows = SheetDump.rows(read(eight(counts)).dance().orElseThrow());
        assertTrue(rows.get(1).contains("\t" + direction + "\t"), rows.get(1));
        assertEquals(rows, SheetDump.rows(read(written).dance().orElseThrow()), written);
    }

    /** A hip roll may end on either foot, which is no mistake. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Roll hips to the left, ending with weight on left",
                "Roll hips anticlockwise, taking weight on L",
                "Hip roll over 2 counts (weight on L)"
            })
    void theWeightBehindAHipRoll(String roll) {
        String text = "TIDE MARK\n\n[1-8] DRIFT\n1-2 Step L beside R, hold\n3-4 Step R to side, hold\n5-6 " + roll
                + "\n7-8 Step R beside L, hold\n";
        assertEquals(List.of(), SheetFixtures.messages(text));
        String written = written(text);
        assertEquals(List.of(), SheetFixtures.messages(written), written);
        assertTrue(written.contains("hip roll (2 counts) (weight on L)"), written);
        assertEquals(
                SheetDump.rows(read(text).dance().orElseThrow()),
                SheetDump.rows(read(written).dance().orElseThrow()),
                written);
    }

    private static final String PHRASED = """
            NINE BRASS BUTTONS
            Phrased, 2 walls, Intermediate; Part A 8 counts, Part B 8 counts, Tag 4 counts
            Sequence: A, B, Tag, A, Ending

            PART A
            1-4 Walk fwd R, L, R, L
            5-8 Walk back R, L, R, L

            PART B
            1-4 Step R to side, step L behind R, step R to side, touch L beside R
            5-8 Step L to side, step R behind L, step L to side, touch R beside L

            TAG
            1-4 Rock R back, recover L, stomp R, stomp L

            ENDING: After the last A, stomp R fwd with both arms out.
            """;

    @Test
    void aPhrasedDanceStaysOne() {
        String written = written(PHRASED);
        assertTrue(written.contains("\nPhrased: Part A 8 counts, Part B 8 counts\n"), written);
        assertTrue(written.contains("\nSequence: A, B, TAG, A, Ending\n"), written);
        assertFalse(written.contains("Count:"), written);
        Dance dance = read(PHRASED).dance().orElseThrow();
        Dance again = read(written).dance().orElseThrow();
        assertEquals(lengths(dance), lengths(again), written);
        assertEquals(List.of("A 8", "B 8"), lengths(again));
        assertTrue(dance.header().statedCounts().isEmpty(), "a part's length is not the dance's");
        assertTrue(again.header().statedCounts().isEmpty(), written);
        assertEquals(dance.sequence(), again.sequence());
    }

    static List<String> lengths(Dance dance) {
        return dance.claims().lengths().stream()
                .map((Claims.PartLength claim) -> claim.part() + " " + claim.counts())
                .sorted()
                .toList();
    }

    @Test
    void anEndingHasNoBracketOfItsOwn() {
        String text = eight("Walk R, walk L")
                + "\nEnding: on wall 3 after count 4\n1 turn half right stepping right to side\n";
        String written = written(text);
        assertTrue(written.contains("\nEnding: on wall 3 after count 4\n1  turn 1/2 R step R to side"), written);
        assertFalse(written.contains("[1-1]"), written);
        Dance again = read(written).dance().orElseThrow();
        assertEquals(
                read(text).dance().orElseThrow().ending().orElseThrow().part().map(part -> part.counts()),
                again.ending().orElseThrow().part().map(part -> part.counts()));
    }

    @Test
    void anUnnamedTagHasNoBracketEither() {
        String text = eight("Walk R, walk L") + "\nTag at the end of wall 2\n1-4 Sway R, L, R, L\n";
        String written = written(text);
        assertTrue(written.contains("\nTAG: 4 counts, at the end of wall 2\n1-2  sway R"), written);
    }
}
