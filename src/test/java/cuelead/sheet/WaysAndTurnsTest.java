package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Foot;
import cuelead.dance.Step;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where each foot goes and how far it turns, in the words of many authors (common practice, no source). */
class WaysAndTurnsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // A half triple turns to the side that is said, and goes back where the dancer's back comes round.
                "1&2 Half turn shuffle L stepping RLR           | R step side -90, L close together, R step back -90",
                "1&2 1/2 turn shuffle left stepping R-L-R       | R step side -90, L close together, R step back -90",
                "1&2 Shuffle 1/2 L on R, L, R                   | R step side -90, L close together, R step back -90",
                "1&2 Shuffle 1/2 turn R stepping R, L, R        | R step side 90, L close together, R step fwd 90",
                "1&2 1/2 turn L shuffling back R, L, R          | R step side -90, L close together, R step back -90",
                "1&2 R chasse with 1/4 turn L                   | R step side, L close together, R step back -90",
                "1&2 R chasse with 1/4 turn R                   | R step side, L close together, R step fwd 90",
                // A turn in brackets, behind "w/" and on a count belongs to the figure.
                "1-4 Vine R (1/4 turn R), scuff L               | R step side, L behind behind, R step fwd 90, L scuff fwd",
                "1-4 Vine R (turning 1/4 R on count 3), scuff L | R step side, L behind behind, R step fwd 90, L scuff fwd",
                "1-4 Vine R w/ 1/4 R, scuff L                   | R step side, L behind behind, R step fwd 90, L scuff fwd",
                "1-4 Vine R, 1/4 turn R on 3, scuff L           | R step side, L behind behind, R step fwd 90, L scuff fwd",
                "1-2 Step R fwd (1/4 turn L), step L to side    | R step fwd -90, L step side",
                "1-2 Step R fwd, pivot (1/2 turn L)             | R step fwd, L pivot place -180",
                "1-2 Turn 90 R stepping R fwd, step L           | R step fwd 90, L step place",
                "1&2 Chasse R L R turning 90 R                  | R step side, L close together, R step fwd 90",
                // One turn on the ball of one foot.
                "1-2 Point R to side, pivot 1/2 turn right on ball of left foot, stepping R next to L | R point side, R close together 180",
                "1-2 Point R to side, on ball of L pivot 1/2 R and step R beside L | R point side, R close together 180",
                // Circles.
                "1-4 Walk R, L, R, L in a half circle to the right       | R walk fwd 45, L walk fwd 45, R walk fwd 45, L walk fwd 45",
                "1-4 Walk around R, L, R, L making a half circle left    | R walk fwd -45, L walk fwd -45, R walk fwd -45, L walk fwd -45",
                "1-4 Walk R, L, R, L in a circle anti-clockwise          | R walk fwd -90, L walk fwd -90, R walk fwd -90, L walk fwd -90",
                "1-4 Walk full turn right: R, L, R, L                    | R walk fwd 90, L walk fwd 90, R walk fwd 90, L walk fwd 90",
                // The weight that comes with a pivot.
                "1-2 Step R fwd, pivot 1/4 turn to the left, shifting your weight to the left foot | R step fwd, L pivot place -90",
                "1-2 Step R fwd, turn 1/2 L transferring weight to L     | R step fwd, L pivot place -180",
                // To the other foot.
                "1-2 Step R to side, touch L to R                | R step side, L touch together",
                "1-2 Step R to side, touch L to R instep         | R step side, L touch together",
                "1-2 Step R to side, bring L up to R             | R step side, L close together",
                "1-2 Step R to side, touch L to the left         | R step side, L touch side",
                // Across and behind.
                "1-2 Step R to side, cross rock L behind R       | R step side, L rock behind",
                "1-2 Step R to side, cross/rock L behind R       | R step side, L rock behind",
                "1-2 Step R to side, cross touch L behind R      | R step side, L touch behind",
                "1-2 R heel fwd, hook R x L shin                 | R heel fwd, R hook over-shin",
                "1-2 Step R fwd, step your left foot out to the left side | R step fwd, L step side",
                // Two words for one step.
                "1-2 Step R to side, cross L behind R and step   | R step side, L behind behind",
                "1-2 Tap R heel fwd, bring it home and step on it | R tap fwd, R close together",
                "1-2 R heel fwd, return                          | R heel fwd, R close together",
                "1-2 R toe fwd, step down                        | R toe fwd, R drop heel",
                "1&2 Kick R, step down on R, cross L over R      | R kick fwd, R step place, L cross over",
                "1-2 Step R fwd and bump hips forward twice      | R step fwd, L bump fwd",
                // Each foot as often as is said, and each figure by the foot that begins it.
                "1-4 Bump R twice, L twice                       | R bump right, R bump right, L bump left, L bump left",
                "1-4 Hip bumps R x2, L x2                        | R bump right, R bump right, L bump left, L bump left",
                "1-4 4 sways R, L, R, L                          | R sway right, L sway left, R sway right, L sway left",
                "1-4 Hip sways R, L, R, L                        | R sway right, L sway left, R sway right, L sway left",
                "1-2 Bump hips forward, back                     | R bump fwd, R bump back",
                "1-4 Toe struts fwd R, L                         | R toe fwd, R drop heel, L toe fwd, L drop heel",
                "1-2 Side strut R: toe, heel                     | R toe side, R drop heel",
                "1-4 Rolling vine R: R, L, R, touch L            | R step fwd 90, L step back 180, R step side 90, L touch together",
                "1&2 Scissor step R                              | R step side, L close together, R cross over",
                "1-4 Reverse rocking chair R                     | R rock back, L recover place, R rock fwd, L recover place",
                "1-4 Swivel heels R, C, L, C                     | - swivel-heels right, - swivel-heels centre, - swivel-heels left, - swivel-heels centre",
                "1-4 Jaz box R                                   | R cross over, L step back, R step side, L close together",
                "1-4 Vine right R-L-R, touch L                   | R step side, L behind behind, R step side, L touch together",
                "1-4 Grapevine right, right-left-right, touch L  | R step side, L behind behind, R step side, L touch together",
                "1-2 Rock/step R back, replace weight to L       | R rock back, L recover place",
                "1-2 Step L back - lift right foot and cross it in front of the left shin | L step back, R hook over-shin",
                "1-2 Step L back, cross R foot in front of L shin | L step back, R hook over-shin",
                "1-2 Step R fwd, slide L up beside R and step    | R step fwd, L slide together",
                "1-2 Step R fwd, sweep L behind R and step       | R step fwd, L behind behind",
                "1&2 Side shuffle R stepping R, L, R turning 1/4 R | R step side, L close together, R step fwd 90",
                "1-2 Step R fwd, spiral full turn L              | R step fwd, - spin - -360",
                "1-4 Side together side touch L                  | R step side, L close together, R step side, L touch together",
            })
    void isDanced(String line, String steps) {
        String sheet = "SLUICE GATE\nCount: 8   Wall: 1\n\n" + line + "\n" + REST.substring(REST.indexOf(next(line)));
        assertEquals(steps, told(sheet, steps.split(",").length), line);
    }

    /** What follows the line, that the sheet has eight counts. */
    private static final String REST = "3-4 Hold, hold\n5-8 Hold, hold, hold, hold\n";

    private static String next(String line) {
        return line.startsWith("1-4") ? "5-8" : "3-4";
    }

    private static String told(String sheet, int steps) {
        return SheetFixtures.firstSection(sheet).steps().stream()
                .limit(steps)
                .map(WaysAndTurnsTest::told)
                .collect(Collectors.joining(", "));
    }

    private static String told(Step step) {
        String turn = step.turn().isNone() ? "" : " " + step.turn().degrees();
        return step.foot().map(foot -> foot == Foot.RIGHT ? "R" : "L").orElse("-") + " "
                + step.action().word() + " " + step.direction().word() + turn;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1&2 Turn 1/4 right and step R to side - Close L to R | incomplete_figure",
                "1-2 Step R fwd 77, step L                            | styling_left_out"
            })
    void isNotGuessed(String line, String kind) {
        String sheet = "SLUICE GATE\nCount: 8   Wall: 1\n\n" + line + "\n" + REST;
        List<String> kinds = SheetFixtures.problems(sheet).stream()
                .filter(problem -> problem.line() == 4)
                .map(problem -> problem.kind())
                .toList();
        assertEquals(List.of(kind), kinds);
    }
}
