package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One slip of an author, and what follows from it, is one finding; a second slip elsewhere is a second one. */
class FoldedMistakesTest {
    private static final String SHEET = """
            SLUICE KEEPER
            Count: 32   Wall: 2   Level: Beginner
            Start with weight on left.

            S1: ROCK, COASTER STEP, WALKS
            1-2 Rock R forward, recover L
            3&4 Step R back, step L beside R, step R forward
            5-6 Walk L, walk R
            7-8 Rock L forward, recover R
            S2: SIDE TOUCHES, COASTER STEP
            1-2 Step L to side, touch R beside L
            3-4 Step R to side, touch L beside R
            5-6 Rock L back, recover R
            7&8 Step L back, step R beside L, step L forward
            S3: HEEL GRIND, STEPS
            1-2 Grind R heel forward, recover L
            3-4 Step R back, step L beside R
            5-6 Step R forward, pivot 1/2 left (6:00)
            7-8 Step R to side, touch L beside R
            S4: VINES
            1-4 Step L to side, step R behind L, step L to side, touch R beside L
            5-6 Step R to side, step L behind R
            7-8 Step R to side, step L beside R

            Restart: on wall 3 after count 16, facing 12:00
            """;

    @Test
    void theRightSheetIsQuiet() {
        assertEquals(List.of(), SheetFixtures.messages(SHEET));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5-6 Rock L back, recover R|5-6 Rock R back, recover L|13 impossible_weight",
                "5-6 Walk L, walk R|5-6 Walk R, walk L|8 impossible_weight",
                "3-4 Step R back, step L beside R|3-4 Step L back, step R beside L|17 impossible_weight",
                "7-8 Step R to side, step L beside R|7-8 Step L to side, step R beside L|23 impossible_weight",
                "1-4 Step L to side, step R behind L, step L to side|1-4 Step R to side, step L behind R, step R to side"
                        + "|21 impossible_weight",
                "7&8 Step L back, step R beside L, step L forward#||13 missing_counts",
                "5-6 Rock L back, recover R#||12 missing_counts",
                "3-4 Step R to side, touch L beside R#||11 missing_counts",
                "5-6 Step R to side, step L behind R#||21 missing_counts",
                "7-8 Step R to side, step L beside R#||22 missing_counts",
            })
    void aSlipIsToldOnce(String right, String wrong, String finding) {
        List<String> found = new ArrayList<>(found(SHEET, right, wrong));
        boolean isShort = finding.endsWith("missing_counts");
        assertEquals(isShort, found.remove("2 count_total"), "the total is a finding of its own");
        assertEquals(List.of(finding), found);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5-6 Rock L back, recover R|5-6 Rock R back, recover L|left (6:00)|left (3:00)|18 wrong_clock",
                "5-6 Rock L back, recover R|5-6 Rock R back, recover L|5-6 Walk L, walk R|5-6 Walk R, walk L|8 impossible_weight",
                "7&8 Step L back, step R beside L, step L forward#||left (6:00)|left (3:00)|17 wrong_clock",
                "7&8 Step L back, step R beside L, step L forward#||facing 12:00|facing 3:00|24 restart_facing",
                "7&8 Step L back, step R beside L, step L forward#||Count: 32|Count: 48|2 count_total",
                "7&8 Step L back, step R beside L, step L forward#||Wall: 2|Wall: 4|2 wrong_walls",
                "5-6 Rock L back, recover R#||S4: VINES|S4: VINES, KICK BALL CHANGE|19 heading_mismatch",
            })
    void aSecondSlipIsToldBesides(String right, String wrong, String other, String otherWrong, String finding) {
        List<String> found = found(SHEET.replace(other, otherWrong), right, wrong);
        assertTrue(found.contains(finding), found::toString);
        assertTrue(found.size() > 1, found::toString);
    }

    /** What is said of the second place is not lost. */
    @Test
    void bothPlacesOfALineOfWrongFeetAreNamed() {
        assertEquals(
                List.of(
                        "sheet.txt:13:5: error: On count 5 the right foot rocks, but it bears the weight, and so does the left"
                                + " foot behind that, on count 7. Let the other foot do each action of counts 5 to 6, or look at"
                                + " both places."),
                SheetFixtures.messages(SHEET.replace("5-6 Rock L back, recover R", "5-6 Rock R back, recover L")));
    }

    private static List<String> found(String sheet, String right, String wrong) {
        String slip = right.replace('#', '\n');
        assertTrue(sheet.contains(slip), slip);
        return SheetFixtures.places(sheet.replace(slip, wrong == null ? "" : wrong)).stream()
                .map(place -> place.replaceFirst(":\\d+", ""))
                .toList();
    }
}
