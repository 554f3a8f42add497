package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.DanceCheck;
import cuelead.report.Problem;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing in the words of several teachers; common practice, no source. */
class SameMeaningTest {
    /** Count, foot, action, turn and weight of every action of a section of these lines, parted by slashes. */
    static String read(String lines) {
        ReadSheet sheet = SheetReader.read("same", "Same\n\nSection 1\n" + lines.replace(" / ", "\n") + "\n");
        List<String> rows = SheetDump.rows(sheet.dance().orElseThrow());
        return rows.stream()
                .map(row -> row.split("\t", -1))
                .map(cells -> String.join(" ", cells[2], cells[3], cells[4], cells[6], cells[8])
                        .replace(" 0 ", " "))
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Step R fwd, pivot 1/2 L stepping onto L",
                "1-2 Step R fwd, pivot half left stepping on to left foot",
                "1-2 Step R fwd, pivot 1/2 turn L stepping on L",
                "1-2 Step R fwd, pivot 1/2 L landing on L",
                "1-2 Step R fwd, pivot 1/2 L transferring weight onto L"
            })
    void theFootThatAPivotEndsOn(String line) {
        assertEquals("1 R step R, 2 L pivot -180 L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Rock forward on left, back on right",
                "1-2 Rock forward on left, back onto right",
                "1-2 Rock L forward, place weight onto R",
                "1-2 Rock L forward, put weight on R",
                "1-2 Rock forward left, place the weight back onto the right",
                "1-2 Rock back on left, forward on right"
            })
    void theWeightGoesBackFromARock(String line) {
        assertEquals("1 L rock L, 2 R recover R", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Step L to side, stomp right beside left, no weight",
                "1-2 Step L to side, stomp R next to L (no weight)",
                "1-2 Step L to side, stomp right without weight",
                "1-2 Step L to side, stomp R up",
                "1-2 Step L to side, stomp R beside L, not taking weight"
            })
    void aStompThatTakesNoWeight(String line) {
        assertEquals("1 L step L, 2 R stompup L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1&2 RF LF RF shuffle with 1/2 turn left, moving back",
                "1&2 Shuffle R L R turning 1/2 left, travelling back",
                "1&2 Shuffle 1/2 turn L stepping R, L, R, going backwards",
                "1&2 R shuffle 1/2 turn left, moving backward",
                "1&2 Shuffle 1/2 left R, L, R, heading back"
            })
    void whereAFigureTravels(String line) {
        assertEquals("1 R step -90 R, 1& L close L, 2 R step -90 R", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2& Taking a long step R with R, rocking L behind R, recovering onto R crossing slightly over L",
                "1-2& Long step R, rock L behind R, recover R crossing over L",
                "1-2& Big step to right, rock back on left, recover on right crossing over left",
                "1-2& Step R to side, rock L behind, recover weight onto R stepping slightly over L",
                "1-2& Step R to side, rock L behind R, recover onto R crossing in front of L"
            })
    void aStepThatIsDescribedFurther(String line) {
        assertEquals("1 R step R, 2 L rock L, 2& R recover R", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3-4 Repeat 1-2 on the other foot: cross left over right, step right to right",
                "3-4 Repeat 1-2 with the other foot (cross left, step right to right)",
                "3-4 Same on the other side: cross left over right, step right to right",
                "3-4 Repeat counts 1-2, opposite feet",
                "3-4 Mirror 1-2: cross L over R, step R to the right"
            })
    void theSameWithTheOtherFoot(String line) {
        assertEquals(
                "1 R cross R, 2 L step L, 3 L cross L, 4 R step R",
                read("1-2 Cross right over left, step left to left / " + line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3-4 Do these two beats again",
                "3-4 Dance the last two counts again",
                "3-4 Do that once more",
                "3-4 Dance these two counts once more",
                "3-4 Do counts 1-2 again"
            })
    void doneAgain(String line) {
        assertEquals(
                "1 R heel L, 2 R step R, 3 L heel R, 4 L step L", read("1-2 R heel fwd, step R to side / " + line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 r side, 2 l behind r, & r side, 3 cross l over r",
                "1 R to side, 2 L behind R; & R to side, 3 cross L over R",
                "1 step R to side. 2 step L behind. & step R to side. 3 cross L over R",
                "(1) R to side, (2) L behind R, (&) R to side, (3) cross L over R",
                "1-2& R to side, L behind R, R to side / 3 cross L over R"
            })
    void anAndBetweenTwoCounts(String line) {
        assertEquals("1 R step R, 2 L behind L, 2& R step R, 3 L cross L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1&2 Step L back, step R next to L, step L fwd    * Restart here on wall 3",
                "1&2 Step L back, step R next to L, step L fwd - restart here on wall 3",
                "1&2 Step L back, step R next to L, step L fwd (Restart here on wall 3)",
                "1&2 Step L back, step R next to L, step L fwd ***restart here during wall 3",
                "1&2 Step L back, step R next to L, step L fwd. Restart wall 3"
            })
    void aRestartBehindTheSteps(String line) {
        assertEquals("1 L step L, 1& R close R, 2 L step L", read(line));
        ReadSheet sheet = SheetReader.read("same", "Same\n\nSection 1\n" + line + "\n3-8 Walk R, L, R, L, R, L\n");
        assertEquals(1, sheet.dance().orElseThrow().restarts().size(), sheet.problems()::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Swing R forward, step R together",
                "1-2 Swing right leg forward, step right beside left",
                "1-2 Swinging right foot forward, close right to left",
                "1-2 Swing R leg across L, step R together",
                "1-2 Swing right back, step right next to left"
            })
    void aSwingTakesNoWeight(String line) {
        assertEquals("1 R kick L, 2 R close R", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Swivel both heels right, both heels centre",
                "1-2 Swivel heels right, heels back to centre",
                "1-2 Swivel heels right, return heels to centre",
                "1-2 Swivel both heels to the right, bring both heels back to centre",
                "1-2 Swivel heels R, heels to the middle"
            })
    void heelsGoOn(String line) {
        assertEquals("1 - swivel-heels B, 2 - swivel-heels B", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-3 Swivel heels right, toes right, heels right",
                "1-3 Swivel heels R, swivel toes R, swivel heels R",
                "1-3 Swivel both heels right, both toes right, both heels to centre",
                "1-3 Swivel heels left, toes left, heels centre",
                "1-3 Swivel heels to R, toes to R, heels to centre"
            })
    void heelsAndToesTravel(String line) {
        assertEquals("1 - swivel-heels B, 2 - swivel-toes B, 3 - swivel-heels B", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Step R forward, half turn to face the back",
                "1-2 Step R forward, 1/2 turn to face 6:00",
                "1-2 Step right forward, half turn over left shoulder to face the back wall",
                "1-2 Step right forward, make a half turn onto left",
                "1-2 Step forward right, turn 1/2 (weight on left)"
            })
    void aTurnBehindAStepForward(String line) {
        assertEquals("1 R step R, 2 L pivot -180 L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1&2 Heel-ball-cross R",
                "1&2 R heel ball cross",
                "1&2 Right heel-ball-cross",
                "1&2 Heel-ball-cross leading with R",
                "1&2 R heel fwd, ball R, cross L over R"
            })
    void heelBallCross(String line) {
        assertEquals("1 R heel L, 1& R ball R, 2 L cross L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-3 Vine right: right, left behind, right / 4 Scuff L",
                "1-3 Vine right / 4 scuff left heel",
                "1-4 Vine right, scuff L",
                "1-3 Grapevine to the right (R, L, R) / 4 L scuff",
                "1-3 Vine right: step right, left behind, step right / 4 Scuff L"
            })
    void stepsBehindTheNameOfAFigure(String line) {
        assertEquals("1 R step R, 2 L behind L, 3 R step R, 4 L scuff R", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rock forward on right (1), recover onto left (2), rock back on right (3), recover onto left (4). If you don't like rocking, do two heel struts.",
                "Rock forward on right (1), recover onto left (2), rock back on right (3), recover onto left (4). Easy option: step touch.",
                "Rock forward on right (1), recover onto left (2), rock back on right (3), recover onto left (4). Alternatively walk back R, L.",
                "Rock forward on right (1), recover onto left (2), rock back on right (3), recover onto left (4). Beginners hold here instead of the rocks.",
                "Rock forward on right (1), recover onto left (2), rock back on right (3), recover onto left (4). Note: keep your steps small on the rock."
            })
    void anEasierWayBehindTheSteps(String line) {
        assertEquals("1 R rock R, 2 L recover L, 3 R rock R, 4 L recover L", read(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Easy option: walk R, L instead of the turn",
                "* Volta: easy option - walk R, L, R round the half circle",
                "Non-turning alternative for the pivots: rock R forward",
                "Optional: kick L on count 2",
                "Alternatively step R to side and touch L"
            })
    void anEasierWayOnALineOfItsOwn(String line) {
        ReadSheet sheet = SheetReader.read("same", "Same\n\nSection 1\n1-4 Walk R, L, R, L\n\n" + line + "\n");
        assertEquals(4, SheetDump.rows(sheet.dance().orElseThrow()).size());
        assertEquals(
                List.of(),
                sheet.problems().stream()
                        .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Turn 1/4 turn L to face 9 o'clock & step L fwd, scuff R",
                "1-2 Turn 1/4 L (9:00) and step L fwd, scuff R",
                "1-2 Turning 1/4 L [9:00], step L fwd, scuff R",
                "1-2 Make a quarter turn left to 9:00 & step L forward, scuff R",
                "1-2 Step L forward turning 1/4 L to face 9:00, scuff R"
            })
    void aFacingBehindATurnThatWaits(String line) {
        assertEquals("1 L step -90 L, 2 R scuff L", read(line));
        ReadSheet sheet = SheetReader.read("same", "Same\n\nSection 1\n" + line + "\n3-4 Rock R back, recover L\n");
        assertEquals(
                List.of(),
                DanceCheck.check(sheet.dance().orElseThrow(), "same").stream()
                        .map(Problem::kind)
                        .filter("wrong_clock"::equals)
                        .toList());
    }
}
