package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.Ending;
import cuelead.report.Problem;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Endings in the words in which sheets tell them (common practice, no source): wall, last count, steps. */
class EndingWordingsTest {
    private static final String DANCE = """
            QUAY END
            32 count 4 wall, start with weight on left

            [1-8] VINES
            1-4 Vine R, touch
            5-8 Vine L, touch
            [9-16] ROCKS
            1-4 R rocking chair
            5-8 R rocking chair
            [17-24] BOX
            1-4 R jazz box 1/4 R
            5-8 R jazz box
            [25-32] WALKS
            1-4 Walk fwd R, L, R, kick L
            5-8 Walk back L, R, L, touch R

            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ending: on wall 9 after count 16:#1-2 Step R fwd, pivot 1/2 turn L#3 Stomp R|9 16 step pivot stomp",
                "ENDING - Wall 9, after 16 counts#17-18 Step R fwd, pivot 1/2 turn L#19 Stomp R|9 16 step pivot stomp",
                "To finish: on wall 5 after count 16, step R fwd, pivot 1/2 L, stomp R|5 16 step pivot stomp",
                "To end facing front: on wall 5 dance to count 8, then step R fwd, pivot 1/4 L|5 8 step pivot",
                "Big finish: after count 8 of wall 5 stomp R, stomp L|5 8 stomp stomp",
                "ENDING: On the last wall you dance to count 14 of the dance, then step fwd on R and pose - Ta-dah!|- 14 step hold",
                "Ending: Wall 5: 1-2 Stomp R, stomp L|5 - stomp stomp",
                "Finish: replace counts 7-8 with stomp R, stomp L|- 6 stomp stomp",
                "Ending (wall 5, after 16 counts) Step R fwd, turn 1/2 L, stomp R|5 16 step pivot stomp",
                "Ending: on wall 9 after count 8 walk back R L R, R coaster step|9 8 walk walk walk step close step",
                "Ending: strike a pose to the front|- -",
                "Ending: On wall 10 dance to count 14, then step R fwd, pivot 1/2 L to face the front|10 14 step pivot",
                "Ending: wall 10, dance 14 counts, step R fwd and pivot 1/4 L to finish facing 12:00|10 14 step pivot",
                "Ending: wall 10, dance up to count 14 then step R forward, 1/4 pivot left to the front wall|10 14 step pivot",
                "To finish: wall 10 ends after count 14; step R fwd, turn 1/4 L to face 12:00, stomp R|10 14 step pivot stomp",
                "Ending: on wall 10 after count 14 step R fwd, pivot 1/4 L facing 12:00 and pose|10 14 step pivot hold",
                "Ending: wall 9 ends on count 8; turn 1/4 R and step R fwd to face the front|9 8 spin step",
                "Ending: step R fwd, pivot 1/4 R so that you end facing the front wall|- - step pivot",
                "Big finish: on the last wall, replace the walks back with: step R fwd, pivot 1/4 R to face 12:00|- 28 step pivot",
                "Ending: on the last wall replace the last 2 counts with step R fwd, pivot 1/4 L|- 30 step pivot",
                "Ending: replace the last two counts with: stomp R fwd, hold|- 30 stomp hold",
                "Ending: instead of the kick, step L fwd to end at the front|- 27 step",
                "Ending: on the final wall replace walk back L, R with step L fwd, pivot 1/4 R|- 28 step pivot",
                "Ending: change the last jazz box to a jazz box 1/4 R to end at 12:00|- 20 cross step step close",
                "Ending: dance to count 31, then step R forward instead of the touch|- 31 step",
                "Ending: replace counts 29-32 with: cross R over L, unwind 1/2 L|- 28 cross unwind",
            })
    void anEndingIsRead(String written, String expected) {
        Ending ending = read(written).ending().orElseThrow();
        String wall = ending.wall().isPresent() ? "" + ending.wall().getAsInt() : "-";
        String count =
                ending.afterCount().isPresent() ? "" + ending.afterCount().getAsInt() : "-";
        String steps = ending.part().stream()
                .flatMap(part -> part.sections().stream())
                .flatMap(section -> section.steps().stream())
                .map(step -> " " + step.action().word())
                .collect(Collectors.joining());
        assertEquals(expected, wall + " " + count + steps);
    }

    /** Wall 9 begins at the front and has turned nowhere after count 16, so half a turn ends at the back. */
    @Test
    void aWrongFacingOfItsStepsIsFoundAndARightOneIsNot() {
        String steps = "Ending: on wall 9 after count 16:\n1-2 Step R fwd, pivot 1/2 turn L (%s)\n3 Stomp R\n";
        assertEquals(List.of("wrong_clock"), kinds(steps.formatted("12:00")));
        assertEquals(List.of(), kinds(steps.formatted("6:00")));
    }

    /** The facing that is told is the one behind the turn, so the turn is told with it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ending: the dance ends on wall 9, count 16. Turn 1/4 right to face the front|After count 16 of wall 9 with the 1/4 R the dancers face 3:00, not 12:00.",
                "Ending: after count 24 of wall 9 unwind 1/2 L to face 12:00|After count 24 of wall 9 with the 1/2 L the dancers face 9:00, not 12:00.",
                "Ending: the dance ends on wall 9 after count 16, facing 6:00|After count 16 of wall 9 the dancers face 12:00, not 6:00.",
            })
    void aWrongFacingIsToldWithTheTurnBeforeIt(String line, String sentence) {
        assertEquals(
                List.of(sentence),
                DanceCheck.check(read(line), "sheet.txt").stream()
                        .map(Problem::sentence)
                        .toList());
    }

    /** What is not understood as steps is told: nobody dances it. */
    @Test
    void stepsThatAreNotUnderstoodAreTold() {
        List<Problem> problems = SheetReader.read(
                        "sheet.txt", DANCE + "Ending: last wall, step quonkly and turn as you like\n")
                .problems();
        assertTrue(problems.stream().anyMatch(problem -> problem.kind().equals("ending_told")), problems.toString());
    }

    private static List<String> kinds(String ending) {
        return DanceCheck.check(read(ending), "sheet.txt").stream()
                .map(Problem::kind)
                .toList();
    }

    private static Dance read(String ending) {
        return SheetReader.read("sheet.txt", DANCE + ending.replace('#', '\n'))
                .dance()
                .orElseThrow();
    }
}
