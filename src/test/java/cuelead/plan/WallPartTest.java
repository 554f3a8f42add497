package cuelead.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import cuelead.dance.Dance;
import cuelead.dance.Section;
import cuelead.sheet.SheetReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a wall dances where a bridge comes within it, or steps are changed before a restart. */
class WallPartTest {
    private static final String SHEET = """
            GULL POST
            Start with weight on left.
            [1-8] SIDE TOUCHES
            1-4 Step R to side, touch L beside R, step L to side, touch R beside L
            5-8 Walk R, L, R, L
            [9-16] ROCKING CHAIRS
            1-4 Rock R forward, recover L, rock R back, recover L
            5-8 Rock R forward, recover L, rock R back, recover L
            Repeat
            """;

    private static Dance dance(String lines) {
        return SheetReader.read("test", SHEET + lines).dance().orElseThrow();
    }

    private static WallPart wall(Dance dance, int wall) {
        return WallPart.of(
                dance,
                dance.parts().get(0),
                wall,
                dance.restarts().stream().filter(found -> found.wall() == wall).findFirst());
    }

    private static String actions(WallPart wall) {
        return String.join(
                " ",
                wall.part().sections().stream()
                        .flatMap(section -> section.steps().stream())
                        .map(step -> step.action().word())
                        .toList());
    }

    @Test
    void aBridgeStandsWhereItIsDanced() {
        Dance dance = dance("Bridge: on wall 2 after section 1\n1-4 Sway R, L, R, L\n");
        assertSame(dance.parts().get(0), wall(dance, 1).part());
        assertEquals(
                List.of("S1", "TAG", "S2"),
                wall(dance, 2).part().sections().stream().map(Section::name).toList());
        assertEquals(20, wall(dance, 2).counts());
    }

    @ParameterizedTest
    @CsvSource({"4, 4 4 4 8", "8, 8 4 8", "12, 8 4 4 4"})
    void aBridgeMayPartASection(int place, String lengths) {
        Dance dance = dance("Bridge: on wall 2 after section 1\n1-4 Sway R, L, R, L\n");
        Dance moved = PlanFixtures.withBridgeAt(dance, place);
        List<String> found = wall(moved, 2).part().sections().stream()
                .map(section -> String.valueOf(section.length()))
                .toList();
        assertEquals(lengths, String.join(" ", found));
        assertEquals(20, wall(moved, 2).part().counts());
    }

    @Test
    void stepsAreChangedBeforeARestart() {
        Dance dance = dance("Restart: on wall 3, replace counts 7-8 with stomp R (7), hold (8), then restart\n");
        WallPart third = wall(dance, 3);
        assertEquals(8, third.counts());
        assertEquals(
                "step touch step touch walk walk stomp hold", actions(third).split(" rock")[0]);
        assertEquals(Optional.empty(), Optional.of(actions(wall(dance, 2))).filter(words -> words.contains("stomp")));
    }
}
