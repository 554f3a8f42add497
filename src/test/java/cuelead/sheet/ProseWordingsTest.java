package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Restart;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What letters, chats and club notes say in many ways, each read as the same (common practice, no source). */
class ProseWordingsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "same again",
                "same",
                "the same thing",
                "ditto",
                "again",
                "once more",
                "as above",
                "rpt",
                "repeat",
                "do it again",
                "that again",
                "same on the left",
                "and left",
                "other side",
                "repeat left",
                "opposite",
                "now the same thing on the left foot",
                "mirror",
                "the same again starting left",
                "all that again",
                "same with left",
                "one more time",
                "and back the other way",
                "are the same again"
            })
    void shortRepeats(String words) {
        String sheet = "Same\n\nSection 1\n1-4 Step R to side, close L, step R to side, touch L\n5-8 " + words + "\n";
        Dance dance = SheetReader.read("same", sheet).dance().orElseThrow();
        List<String> feet = SheetDump.rows(dance).stream()
                .map(row -> row.split("\t")[3] + " " + row.split("\t")[4])
                .toList();
        assertEquals(
                List.of("R step", "L close", "R step", "L touch", "L step", "R close", "L step", "R touch"),
                feet,
                words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 x R over L, step L to side            | 1 R cross R, 2 L step L",
                "1-2 x r over l, step l back               | 1 R cross R, 2 L step L",
                "3&4 x R over L, step L to side, x R over L | 3 R cross R, 3& L step L, 4 R cross R",
                "1 x R behind L                            | 1 R behind R",
                "1-2 x rock R over L, recover L            | 1 R rock R, 2 L recover L",
                "1-2 R toe forward, R heel down            | 1 R toe L, 2 R drop R",
                "1-2 toe R forward, heel down              | 1 R toe L, 2 R drop R",
                "1-2 touch R toe forward, put R heel down  | 1 R toe L, 2 R drop R",
                "1-2 R heel forward, R toe down            | 1 R heel L, 2 R drop R",
                "1-2 touch R toe back, bring the heel down | 1 R toe L, 2 R drop R",
                "1-4 walk R, L, R and kick L               | 1 R walk R, 2 L walk L, 3 R walk R, 4 L kick R",
                "1-4 walk back R, L, R and touch L         | 1 R walk R, 2 L walk L, 3 R walk R, 4 L touch R",
                "1-2 step R to side, join L to R           | 1 R step R, 2 L close L"
            })
    void wordsOfSteps(String line, String actions) {
        assertEquals(actions, SameMeaningTest.read(line));
    }

    private static final String TURN = """
            Net Loft
            8 counts, 4 walls
            Weight on left

            1-2 Step R forward, pivot 1/4 left%s
            3-4 Step R forward, touch L beside R
            5-6 Step L forward, pivot 1/2 right%s
            7-8 Stomp L, stomp R
            """;

    /** A sheet that says the right hour is quiet, one that says another is told so. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                " (9:00)| (12:00)", " you now face nine o'clock| you now face twelve o'clock", " facing 9| facing 12",
                " looking at 9 o'clock| looking at 12 o'clock", " @9| @12", " (you are facing 9)| (you are facing 12)",
                " to face nine| to face twelve"
            })
    void hours(String words) {
        String first = words.substring(0, words.indexOf('|'));
        String second = words.substring(words.indexOf('|') + 1);
        assertTrue(places(TURN.formatted(first, "")).stream().noneMatch(place -> place.contains("wrong_clock")), first);
        assertTrue(
                places(TURN.formatted(second, "")).stream().anyMatch(place -> place.contains("wrong_clock")), second);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The dance restart from the beginning.",
                "The dance restarts from the beginning",
                "Restart the dance from the top",
                "Restart on the new wall",
                "Now restart the dance and enjoy",
                "Then restart from the start"
            })
    void theDanceBeginsAgain(String words) {
        assertEquals(
                List.of(),
                messages(TURN.formatted("", "")
                                .replace("pivot 1/2 right", "hold, hold")
                                .replace("5-6 Step L forward, hold, hold", "5-6 Step L forward, scuff R")
                                .replace("7-8 Stomp L, stomp R", "7-8 Stomp R, stomp L")
                        + words));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Restart: wall 5, dance counts 1-4 then restart",
                "Restart: on wall 5, dance cts 1-4 and restart",
                "Restart on wall 5 after counts 1 to 4",
                "On wall 5 dance counts 1 - 4, then restart",
                "Wall 5: dance the first 4 counts and restart"
            })
    void restarts(String words) {
        Dance dance = SheetReader.read("net", TURN.formatted("", "") + "\n" + words)
                .dance()
                .orElseThrow();
        assertEquals(
                List.of(4), dance.restarts().stream().map(Restart::afterCount).toList(), words);
    }

    private static final String PHRASED = """
            Net Loft
            %s
            Sequence: A, B, A, B

            PART A
            1-8 Walk R, L, R, L, R, L, R, L
            PART B
            1-8 Step R to side, touch L, step L to side, touch R, step R to side, touch L, step L to side, touch R
            """;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Part A = 8 counts, Part B = 16 counts",
                "A: 8c, B: 16c",
                "A 8 counts / B 16 counts",
                "Part A (8), Part B (16)",
                "PART A is 8 counts and PART B is 16 counts",
                "A = 8, B = 16"
            })
    void lengthsOfParts(String words) {
        assertTrue(places(PHRASED.formatted(words)).stream().anyMatch(place -> place.contains("count_total")), words);
        String right = words.replace("16", "8");
        assertTrue(places(PHRASED.formatted(right)).stream().noneMatch(place -> place.contains("count_total")), right);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Dear all,\nI have called it Tin Lid. 8 counts, 4 walls.",
                "Hi everyone!\nHere is our new dance, it's called \"Tin Lid\". 8 counts, 4 walls.",
                "Subject: Thursday\nTo: the class\n\nThe name of the dance is Tin Lid. It has 8 counts and 4 walls.",
                "Teaching script - \"Tin Lid\" - 8 counts - 4 walls",
                "here's the dance for tonight\nTIN LID, 8 counts, 4 walls",
                "This one is called Tin Lid and it has eight counts and it's a four wall dance"
            })
    void titles(String head) {
        String sheet = head + "\n\n" + TURN.formatted("", "").substring(TURN.indexOf("1-2"));
        assertEquals(
                "tin lid",
                SheetReader.read("net", sheet)
                        .dance()
                        .orElseThrow()
                        .header()
                        .title()
                        .toLowerCase(Locale.ROOT));
    }

    /** A foot that cannot act is told once, with what follows from it, and no longer once a foot took the weight. */
    @Test
    void oneFootOnce() {
        String sheet = """
                Net Loft
                Weight on left

                1-2 Step R to side, cross L behind R
                3-4 Step L to side, touch L beside R
                5-6 Touch L heel forward, hook L
                7-8 Step L beside R, touch R beside L
                """;
        assertEquals(
                1,
                places(sheet).stream()
                        .filter(place -> place.contains("impossible_weight"))
                        .count());
    }

    /** Lengths and counts as they are said. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Start with a vine to the right and a touch, that's four counts.\nThen a vine to the left and a touch, another four.",
                "Start with a vine to the right and a touch, which is 4 counts.\nThen a vine to the left and a touch, four more.",
                "First a vine to the right and a touch, taking four counts.\nThen a vine to the left and a touch, that's another four counts.",
                "Vine to the right and touch (four counts).\nVine to the left and touch (four counts).",
                "Step R to side for one, step L behind for two, step R to side for three and touch L for four.\nStep L to side for five, step R behind for six, step L to side for seven and touch R for eight.",
                "1 step R to side 2 step L behind 3 step R to side 4 touch L\n5 step L to side 6 step R behind 7 step L to side 8 touch R"
            })
    void saidLengths(String lines) {
        Dance dance = SheetReader.read("net", "Net Loft\n8 counts, 1 wall, weight on left\n\n" + lines + "\n\nRepeat\n")
                .dance()
                .orElseThrow();
        List<String> steps = SheetDump.rows(dance).stream()
                .map(row -> row.split("\t")[1] + " " + row.split("\t")[3] + " " + row.split("\t")[4])
                .toList();
        assertEquals(
                List.of(
                        "1 R step",
                        "2 L behind",
                        "3 R step",
                        "4 L touch",
                        "5 L step",
                        "6 R behind",
                        "7 L step",
                        "8 R touch"),
                steps,
                lines);
    }
}
