package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.Restart;
import cuelead.report.Problem;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Steps that are danced before a restart and on no other wall, in the words in which sheets tell them (common practice). */
class StepChangesTest {
    private static final String DANCE = """
            REED BED
            32 counts, 2 walls, start with weight on left

            [1-8] SIDES
            1-4 Step R to side, touch L beside R, step L to side, touch R beside L
            5-8 Vine R, touch L
            [9-16] VINE AND CHAIR
            1-4 Vine L with 1/4 turn L, scuff R
            5-8 Rocking chair R
            [17-24] STRUTS
            1-4 Toe strut R fwd, toe strut L fwd
            5-8 Walk fwd R, L, R, L
            [25-32] BOX
            1-4 Jazz box R with 1/4 turn L
            5-8 Stomp R, stomp L, stomp R, stomp L

            """;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Restart/step change: On wall 4, dance to count 14, then rock R back (15), recover L (16) and restart",
                "Restart on wall 4 after count 14: add rock back R, recover L, then restart",
                "Step change & restart: wall 4, dance up to count 14, rock R back, recover L, restart",
                "Restart with step change: On wall 4 dance the first 14 counts, then rock R back, recover L and restart",
                "On wall 4 dance up to and including count 14, then rock R back, recover L, then restart the dance",
                "Wall 4: dance 14 counts, then rock R back (15), recover L (16), restart",
                "Restart: on wall 4 after count 14, rock R back, recover L, then restart",
                "During wall 4 dance counts 1-14, then rock back R (15) recover L (16). Restart facing 3:00",
                "Restart on wall 4 after 14 counts. Add: 15-16 Rock R back, recover L",
                "Restart on wall 4 after count 14 (rock R back, recover L) then restart",
                "Restart on wall 4 after 14 counts then add rock R back, recover L",
                "Restart on wall 4: dance the first 6 counts of section 2, then rock R back (7), recover L (8) and restart",
                "Restart: on wall 4 dance section 1 and 6 counts of section 2, then rock R back, recover L and restart",
                "After wall 4, count 14: do rock back R, recover L then start again",
                "Restart: on wall 4 replace counts 15-16 with rock R back, recover L, then restart",
                "Restart: wall 4, replace counts 15-16 by rock R back, recover L then restart",
                "Restart on wall 4: dance to count 14 then change 15-16 to rock R back, recover L and restart",
                "Restart on wall 4 after count 16 (step change on 15-16: rock R back, recover L)",
                "Restart with step change on wall 4: counts 15-16 become rock R back, recover L",
            })
    void areDancedAndCounted(String line) {
        assertEquals(List.of("wall 4 after 16: 15 rock 16 recover"), restarts(DANCE + line + "\n"));
        assertEquals(List.of(), told(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Restart on wall 4: dance to count 12, then rocking chair R and restart|wall 4 after 16: 13 rock 14 recover 15 rock 16 recover",
                "Restart on walls 2 and 4 after count 14, then stomp R, stomp L and restart|wall 2 after 16: 15 stomp 16 stomp,wall 4 after 16: 15 stomp 16 stomp",
                "Restart on wall 4 (starts facing 6:00): dance 14 counts, then replace the rock (15&16) with: 15 stomp R, 16 stomp L. Restart facing 3:00|wall 4 after 16: 15 stomp 16 stomp",
                "Restart: on wall 4 dance to count 14, then 15 stomp R, 16 stomp L and restart|wall 4 after 16: 15 stomp 16 stomp",
                "Restart on wall 4 after count 16 with a step change: on count 16 touch L beside R|wall 4 after 16: 16 touch",
                "Restart: wall 4, dance counts 1-16 but replace the last 2 counts with stomp R, stomp L|wall 4 after 16: 15 stomp 16 stomp",
                "Restart: wall 4 after 16 counts (replace the rock with stomp R, stomp L)|wall 4 after 16: 15 stomp 16 stomp",
                "Restart on wall 4 after 16 counts (change the last step to a touch)|wall 4 after 16: 16 touch",
                "Restart on wall 4 after 16 counts, change your weight to the left|wall 4 after 16:",
                "Restart on wall 4: dance up to count 12, hold counts 13-16 and restart|wall 4 after 16: 13 hold 14 hold 15 hold 16 hold",
                "Restart on wall 4 after count 15, then step L beside R (16) and restart|wall 4 after 16: 16 close",
                "Restart: on wall 4 after count 16, facing 3:00, start again from the beginning|wall 4 after 16:",
                "Restart on wall 4 after count 16. Start again with a step to the right|wall 4 after 16:",
            })
    void whatIsAddedFillsItsCounts(String line, String expected) {
        assertEquals(List.of(expected.split(",")), restarts(DANCE + line + "\n"));
    }

    /** They would be danced in silence, so that is said. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Restart: on wall 4 dance to count 14, then quonk R (15), recover L (16) and restart",
                "Restart: on wall 4 replace counts 15-16 with quonk R, wobble then restart",
                "Restart: on wall 4 after count 16, touch R beside L and restart",
            })
    void thoseThatAreNotClearAreTold(String line) {
        assertEquals(List.of("restart_steps"), told(line));
    }

    @Test
    void areTheSameWhenWrittenAnew() {
        String sheet =
                DANCE + "Restart on wall 4: dance to count 14, then step R fwd (15&), L beside R (&), R fwd (16)\n";
        ReadSheet read = SheetReader.read("reed.txt", sheet.replace("(15&), L beside R (&)", "(15), L beside R (&)"));
        String anew = SheetWriter.write(read.dance().orElseThrow(), read.notes());
        assertEquals(List.of("wall 4 after 16: 15 step 15& close 16 step"), restarts(anew), anew);
    }

    private static List<String> restarts(String sheet) {
        return SheetReader.read("reed.txt", sheet).dance().orElseThrow().restarts().stream()
                .map(StepChangesTest::words)
                .toList();
    }

    private static String words(Restart restart) {
        return "wall " + restart.wall() + " after " + restart.afterCount() + ":"
                + restart.changed().stream()
                        .map(step ->
                                " " + step.count().label() + " " + step.action().word())
                        .collect(Collectors.joining());
    }

    private static List<String> told(String line) {
        ReadSheet read = SheetReader.read("reed.txt", DANCE + line + "\n");
        Dance dance = read.dance().orElseThrow();
        return Stream.concat(read.problems().stream(), DanceCheck.check(dance, "reed.txt").stream())
                .map(Problem::kind)
                .toList();
    }
}
