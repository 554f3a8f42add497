package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Step;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as beginners' sheets name them: foot, action, turn and weight of each count (common practice). */
class CommonFiguresTest {
    /**
     * A paddle turn comes back onto the other foot behind a step, as step and pivot do, and stays on the standing foot
     * behind a point: both leave the same foot free (figures.tsv, paddle_quarter).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Step R forward, paddle 1/8 turn left|R step 0 R, L pivot -45 L",
                "1-2 Step forward on right, paddle 1/4 turn left|R step 0 R, L pivot -90 L",
                "1-2 Step R to side, paddle 1/4 turn L|R step 0 R, L pivot -90 L",
                "1-2 Step R forward, paddle turn 1/4|R step 0 R, L pivot -90 L",
                "1-2 Point R to side, paddle 1/4 turn left|R point 0 L, - spin -90 L",
                "1-2 Point R to side, paddle 1/8 turn|R point 0 L, - spin -45 L",
                "1& Paddle 1/4 turn left|R touch 0 L, R hitch -90 L",
                "1& Paddle 1/8 turn left|R touch 0 L, R hitch -45 L",
                "1-4 Monterey 1/2 turn right|R point 0 L, R close 180 R, L point 0 R, L close 0 L",
                "1-4 Monterey 3/4 turn right|R point 0 L, R close 270 R, L point 0 R, L close 0 L",
                "1-4 Walk around 3/4 turn right|R walk 45 R, L walk 90 L, R walk 45 R, L walk 90 L",
                "1-4 Walk around 1/2 turn left R, L, R, L|R walk -45 R, L walk -45 L, R walk -45 R, L walk -45 L",
                "1-2 Walk around 1/4 turn right|R walk 45 R, L walk 45 L"
            })
    void isReadAs(String line, String expected) {
        assertEquals(expected, moves(line));
    }

    @Test
    void aStepOnTheLineAboveCounts() {
        assertEquals("R step 0 R, L pivot -45 L", moves("1 Step R forward\n2 Paddle 1/8 turn left"));
    }

    private static String moves(String lines) {
        String text = "GULL POST\nStart with weight on left.\n[1-8] PRACTICE\n" + lines + "\n";
        ReadSheet sheet = SheetReader.read("sheet.txt", text);
        List<String> unread = sheet.problems().stream()
                .filter(problem -> !problem.kind().equals("missing_counts"))
                .map(problem -> problem.message())
                .toList();
        assertEquals(List.of(), unread);
        return sheet.dance().orElseThrow().parts().get(0).sections().get(0).steps().stream()
                .map(CommonFiguresTest::row)
                .collect(Collectors.joining(", "));
    }

    private static String row(Step step) {
        return step.foot().map(foot -> foot.letter()).orElse("-") + " "
                + step.action().word() + " " + step.turn().degrees() + " "
                + step.weightAfter().letter();
    }
}
