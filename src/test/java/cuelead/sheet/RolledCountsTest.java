package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.DanceRow;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A nightclub two-step whose sections end on the "and" of 8, or on the first count of the next section, under headings
 * in many forms (common practice, no source).
 */
class RolledCountsTest {
    private static final String HEAD = """
            Gull Letter
            32 Counts, 2 Walls, Intermediate
            Intro: 16 Counts, weight on L

            """;
    private static final String PLAIN = """
            S1: FIGURES
            1,2&   Big step R to R side, rock L behind R, recover R across L
            3,4&   Big step L to L side, rock R behind L, recover L across R
            5,6&   1/4 turn R stepping R fwd, step L fwd, pivot 1/2 turn R (weight R) [9:00]
            7,8&   Step L fwd, rock R fwd, recover L

            S2: FIGURES
            1,2&   Step R back, step L back, step R next to L
            3,4&   Step L fwd, cross R over L, step L to L side
            5,6&   Cross R behind L, step L to L side, cross R over L
            7,8&   Rock L to L side, recover R, cross L over R

            S3: FIGURES
            1,2&   Big step R to R side, rock L behind R, recover R across L
            3,4&   1/4 turn L stepping L fwd, step R fwd, pivot 1/2 turn L (weight L) [12:00]
            5,6&   1/2 turn L stepping R back, step L back, step R next to L [6:00]
            7,8&   Step L fwd, step R fwd, step L next to R

            S4: FIGURES
            1-2    Sway R, sway L
            3,4&   Step R to R side, cross L behind R, step R to R side
            5,6&   Cross rock L over R, recover R, step L to L side
            7-8    Cross R over L, step L to L side [6:00]
            """;
    /** The same dance, its first counts written with the counts that lead to them. */
    private static final String ROLLED = """
            S1: FIGURES
            1   big step R to R side
            2&3   rock L behind R, recover R across L, big step L to L side
            4&5   rock R behind L, recover L across R, 1/4 turn R stepping R fwd
            6&7   step L fwd, pivot 1/2 turn R (weight R) [9:00], Step L fwd
            8&1   rock R fwd, recover L, Step R back

            S2: FIGURES
            2&3   step L back, step R next to L, Step L fwd
            4&5   cross R over L, step L to L side, Cross R behind L
            6&7   step L to L side, cross R over L, Rock L to L side
            8&1   recover R, cross L over R, big step R to R side

            S3: FIGURES
            2&3   rock L behind R, recover R across L, 1/4 turn L stepping L fwd
            4&5   step R fwd, pivot 1/2 turn L (weight L) [12:00], 1/2 turn L stepping R back
            6&7   step L back, step R next to L [6:00], Step L fwd
            8&1   step R fwd, step L next to R, Sway R

            S4: FIGURES
            2,3   sway L, Step R to R side
            4&5   cross L behind R, step R to R side, Cross rock L over R
            6&7   recover R, step L to L side, Cross R over L
            8   step L to L side [6:00]
            """;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[1-8&] F;[9-16&] F;[17-24&] F;[25-32] F",
                "[1 - 8 &] F;[9 - 16 &] F;[17 - 24 &] F;[25 - 32] F",
                "(1-8&) F;(9-16&) F;(17-24&) F;(25-32) F",
                "[1-8 and] F;[9-16 and] F;[17-24 and] F;[25-32] F",
                "1-8& F;9-16& F;17-24& F;25-32 F",
                "SECTION 1 [1-8&] F;SECTION 2 [9-16&] F;SECTION 3 [17-24&] F;SECTION 4 [25-32] F"
            })
    void endsOnTheAnd(String heads) {
        assertSame(headed(PLAIN, heads));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "S1: F;S2: F;S3: F;S4: F",
                "[1-8] F;[9-16] F;[17-24] F;[25-32] F",
                "[1-9] F;[10-17] F;[18-25] F;[26-32] F",
                "[1-9] F;[2-9] F;[2-9] F;[2-8] F",
                "[1-8&1] F;[2-8&1] F;[2-8&1] F;[2-8] F",
                "FIRST FIGURES;SECOND FIGURES;THIRD FIGURES;LAST FIGURES",
                ";;;"
            })
    void endsOnTheFirstCountOfTheNext(String heads) {
        assertSame(headed(ROLLED, heads));
        assertSame(headed(ROLLED, heads).replace("8&1 ", "8 & 1 "));
    }

    private static String headed(String dance, String heads) {
        String[] each = heads.split(";", -1);
        String text = dance;
        for (int i = 0; i < each.length; i++) {
            text = text.replace("S" + (i + 1) + ": FIGURES", each[i].replace(" F", " FIGURES"));
        }
        return text;
    }

    private static void assertSame(String dance) {
        ReadSheet read = SheetReader.read("gull.txt", HEAD + dance);
        assertEquals(List.of(), Blamed.in(read), dance);
        assertEquals(List.of(), Blamed.in(DanceCheck.check(read.dance().orElseThrow(), "gull.txt")), dance);
        assertEquals(
                rows(SheetReader.read("plain.txt", HEAD + PLAIN).dance().orElseThrow()),
                rows(read.dance().orElseThrow()),
                dance);
    }

    /** Count in the dance, foot, action, turn and weight: sections may begin a count later. */
    private static List<String> rows(Dance dance) {
        return DanceRow.of(dance).stream()
                .map(row -> row.countInDance() + " " + row.step().foot() + " "
                        + row.step().action() + " " + row.step().turn().degrees() + " "
                        + row.step().weightAfter())
                .toList();
    }
}
