package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes that authors make, each planted alone in a right sheet, found where it stands and under its kind. */
class PlantedMistakesTest {
    private static final String SHEET = """
            NET LOFT
            Count: 32   Wall: 4   Level: Improver
            Start with weight on left.

            [1-8] VINE RIGHT, VINE LEFT 1/4 TURN
            1-4 Step R to side, step L behind R, step R to side, touch L beside R
            5-6 Step L to side, step R behind L
            7-8 Turn 1/4 left step L forward, brush R forward (9:00)
            [9-16] RUMBA BOX
            1-4 Step R to side, step L beside R, step R forward, hold
            5-8 Step L to side, step R beside L, step L back, hold
            [17-24] SHUFFLES, ROCKS
            1&2 Shuffle forward R, L, R
            3-4 Rock L forward, recover R
            5&6 Shuffle back L, R, L
            7-8 Rock R back, recover L
            [25-32] SIDE TOUCHES, STEP PIVOT
            1-4 Step R to side, touch L beside R, step L to side, touch R beside L
            5-6 Step R forward, pivot 1/2 left (3:00)
            7-8 Stomp R beside L, stomp L beside R
            Repeat
            Restart: on wall 3 after count 16, facing 3:00
            Tag: at the end of wall 5, facing 9:00
            1-4 Sway R, L, R, L
            """;

    @Test
    void theRightSheetIsQuiet() {
        assertEquals(List.of(), messages(SHEET));
    }

    /** A line of the sheet, what stands there instead, and the finding that must come. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Turn 1/4 left step|Turn 1/4 right step|8 wrong_clock",
                "pivot 1/2 left|pivot 1/4 left|19 wrong_clock",
                "5-6 Step L to side|4-5 Step L to side|7 count_order",
                "5-6 Step L to side|6 Step L to side|6 missing_counts",
                "[9-16] RUMBA|[17-24] RUMBA|9 missing_counts",
                "Wall: 4|Wall: 2|2 wrong_walls",
                "Count: 32|Count: 48|2 count_total",
                "after count 16|after count 18|22 restart_weight",
                "16, facing 3:00|16, facing 9:00|22 restart_facing",
                "Sway R, L, R, L|Sway R, L, R, hold|23 tag_weight",
                "wall 5, facing 9:00|wall 5, facing 6:00|23 tag_facing",
                "5-8 Step L to side, step R beside L, step L back|5-8 Step R to side, step L beside R, step R back"
                        + "|11 impossible_weight",
                "5-8 Step L to side, step R beside L, step L back, hold|5-7 Step L to side, step R beside L, step L back"
                        + "|11 missing_counts",
                "step L back, hold|step L back, hold, hold|11 incomplete_figure",
                "forward R, L, R|forward R, L|13 incomplete_figure",
                "Shuffle forward R, L, R|Step R forward, step L forward|13 incomplete_figure",
                "forward R, L, R|forward R, R, R|13 impossible_weight",
                "recover R|hold|15 impossible_weight",
                "stomp L beside R|touch L beside R|20 loop_weight",
                "SHUFFLES, ROCKS|SHUFFLES, FULL TURN|12 heading_mismatch",
                "SHUFFLES, ROCKS|COASTER STEP, KICK BALL CHANGE|12 heading_mismatch",
                "after count 16|after count 32|22 restart_late"
            })
    void isFoundWhereItStands(String right, String wrong, String finding) {
        assertTrue(SHEET.contains(right), right);
        List<String> found = places(SHEET.replace(right, wrong)).stream()
                .map(place -> place.replaceFirst(":\\d+ ", " "))
                .toList();
        assertTrue(found.contains(finding), () -> found.toString());
    }

    /** A pivot that turns too little changes walls, restart and tag; the printed clock tells where, and that is told. */
    @Test
    void oneWrongTurnIsToldOnce() {
        List<String> found = messages(SHEET.replace("pivot 1/2 left", "pivot 1/4 left"));
        assertEquals(1, found.size(), found::toString);
        assertTrue(found.get(0).contains("Correct the turn before it"), found.get(0));
    }

    @Test
    void aWrongTotalNamesItsCauses() {
        List<String> found = messages(SHEET.replace("7-8 Rock R back, recover L\n", ""));
        assertTrue(
                found.stream().anyMatch(message -> message.endsWith("not 8 counts long: S3 has 6.")), found::toString);
    }
}
