package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Foot;
import cuelead.dance.Step;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines of four counts in words of the trade, and what is danced on them (common practice, no source). */
class MoreFigureWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Elvis knees R, L, R, L | 1 knee-pop, 2 knee-pop, 3 knee-pop, 4 knee-pop",
                "Swivel R: heels, toes, heels, hold | 1 swivel-heels, 2 swivel-toes, 3 swivel-heels, 4 hold",
                "Swivel to the right: heels, toes, heels, toes | 1 swivel-heels, 2 swivel-toes, 3 swivel-heels, 4 swivel-toes",
                "Swivel heels right, toes, heels, hold | 1 swivel-heels, 2 swivel-toes, 3 swivel-heels, 4 hold",
                "Swivel heels R, toes R, heels R, hold | 1 swivel-heels, 2 swivel-toes, 3 swivel-heels, 4 hold",
                "Run around 3/4 turn L: R, L, R, L | 1 R walk -45, 2 L walk -90, 3 R walk -45, 4 L walk -90",
                "Run round 3/4 L R, L, R, L | 1 R walk -45, 2 L walk -90, 3 R walk -45, 4 L walk -90",
                "Walking round 3/4 left R, L, R, L | 1 R walk -45, 2 L walk -90, 3 R walk -45, 4 L walk -90",
                "R shuffle fwd, L rock back | 1 R step, 1& L close, 2 R step, 3 L rock, 4 R recover",
                "R chasse, L rock back | 1 R step, 1& L close, 2 R step, 3 L rock, 4 R recover",
                "R coaster step, walk L, R | 1 R step, 1& L close, 2 R step, 3 L walk, 4 R walk",
                "R kick ball change, walk R, L | 1 R kick, 1& R ball, 2 L change, 3 R walk, 4 L walk",
                "R shuffle fwd, hold | 1 R step, 2 L close, 3 R step, 4 hold",
                "Side, behind, side, cross (starting R) | 1 R step, 2 L behind, 3 R step, 4 L cross",
                "Walk, walk, walk, touch (leading with R) | 1 R walk, 2 L walk, 3 R walk, 4 L touch",
                "Step R to side, drag L to meet R over 2 counts, hold | 1 R step, 2 L drag, 3 L drag, 4 hold",
                "Step R to side, drag L to join R for 3 counts | 1 R step, 2 L drag, 3 L drag, 4 L drag",
                "Step R back, slide L to meet R (3 counts) | 1 R step, 2 L slide, 3 L slide, 4 L slide",
                "Step R to side, drag L towards R over 3 counts | 1 R step, 2 L drag, 3 L drag, 4 L drag"
            })
    void fillFourCounts(String line, String danced) {
        assertEquals(danced, danced("1-4 " + line), line);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Reverse rumba box back: L side, together, back, hold | 5 L step, 6 R close, 7 L step, 8 hold",
                "Reverse vine: L side, behind, side, touch | 5 L step, 6 R behind, 7 L step, 8 R touch",
                "Reverse | 5 L step, 6 R close, 7 L step, 8 hold",
                "Reverse to the left | 5 L step, 6 R close, 7 L step, 8 hold"
            })
    void theReverse(String line, String danced) {
        String first = "1 R step, 2 L close, 3 R step, 4 hold, ";
        assertEquals(first + danced, danced("1-4 R side, together, forward, hold\n5-8 " + line), line);
    }

    private static String danced(String lines) {
        List<Step> steps = SheetFixtures.firstSection("Nettle Row\nStart with weight on L\nSection 1\n" + lines + "\n")
                .steps();
        return steps.stream().map(MoreFigureWordsTest::told).collect(Collectors.joining(", "));
    }

    private static String told(Step step) {
        String foot = step.foot().map(Foot::letter).map(letter -> letter + " ").orElse("");
        String turn = step.turn().isNone() ? "" : " " + step.turn().degrees();
        boolean split = !step.count().isWhole();
        return step.count().number()
                + (split ? "& " : " ")
                + foot
                + step.action().word()
                + turn;
    }
}
