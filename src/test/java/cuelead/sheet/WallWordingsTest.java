package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * On which walls a restart or a tag comes, and after which count, as sheets word it (common practice, no source). The
 * dance turns a quarter right on count 4 of its 16 and has four walls.
 */
class WallWordingsTest {
    private static final String DANCE = """
            SLUICE GATE
            Count: 16   Wall: 4   Level: Beginner

            [1-8] VINE WITH A QUARTER, VINE
            1-4 Step R to side, step L behind R, turn 1/4 R and step R fwd, touch L beside R
            5-8 Step L to side, step R behind L, step L to side, touch R beside L
            [9-16] ROCKING CHAIR, SIDE TOUCHES
            1-4 Rock R fwd, recover L, rock R back, recover L
            5-8 Step R to side, touch L beside R, step L to side, touch R beside L
            """;

    /** Walls and counts of the restarts; walls of the tag. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Restart: wall 6, leave out the last 8 counts.|6 after 8",
                "On wall 6 leave off the last eight counts and start again|6 after 8",
                "Wall 6: omit the last section|6 after 8",
                "Restart on wall 6: dance 1 section, then restart|6 after 8",
                "Restart on walls 2 and 5, omitting the last 4 counts|2 after 12, 5 after 12",
                "Restart on wall 3 (6:00) after 8 counts|3 after 8",
                "Restart on wall 3 (9:00) after 8 counts|3 after 8",
                "Restart: walls 3 (6:00) and 6 (3:00) after 8 counts|3 after 8, 6 after 8",
                "Restart on wall 3 (facing 9:00) after 8 counts & wall 5 (3:00) after 8 counts|3 after 8, 5 after 8",
                "Tag after walls 2, 4 and 6: Sway R, L, R, L|tag 2, 4, 6",
                "Tag (after walls 2, 4 and 6): 1-4 Sway R, L, R, L|tag 2, 4, 6",
                "Tag after walls 2 and 4: 1-4 Sway R, L, R, L|tag 2, 4",
                "Tag after walls 2, 4 & 6: 1-2 Sway R, L 3-4 Sway R, L|tag 2, 4, 6",
                "Tag (4 counts): at the end of walls 2 (6:00) and 5 (3:00)\\n1-4 Sway R, L, R, L|tag 2, 5",
                "Tag at the end of walls 2 (facing 6:00) & 5 (facing 3:00):\\n1-4 Sway R, L, R, L|tag 2, 5",
                "TAG: On wall 4 after count 8\\n1-2 Stomp R, stomp L\\nThen restart the dance.|4 after 8tag 4",
                "TAG: wall 3 after count 8, then restart\\n1-2 Stomp R, stomp L|3 after 8tag 3",
                "Tag at the end of wall 2 (6:00) and wall 5 (3:00):\\n1-4 Sway R, L, R, L|tag 2, 5"
            })
    void isRead(String lines, String expected) {
        String text = DANCE + "\n" + lines.replace("\\n", "\n") + "\n";
        assertEquals(List.of(), SheetFixtures.messages(text));
        assertEquals(expected, told(text));
    }

    /** A facing behind a wall's number may be where it begins or where it is broken off, and nothing else. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Restart on wall 3 (12:00) after 8 counts|After count 8 of wall 3 the dancers face 9:00, not 12:00.",
                "Restart on wall 3 after 8 counts (6:00)|After count 8 of wall 3 the dancers face 9:00, not 6:00.",
                "Tag: at the end of walls 2 (6:00) and 5 (6:00)\\n1-4 Sway R, L, R, L|At the end of wall 5 the dancers face 3:00, not 6:00."
            })
    void aWrongFacingIsTold(String lines, String sentence) {
        String text = DANCE + "\n" + lines.replace("\\n", "\n") + "\n";
        List<String> messages = SheetFixtures.messages(text);
        assertEquals(1, messages.size(), messages.toString());
        assertEquals(sentence, messages.get(0).replaceAll(".*error: (.*?\\.) .*", "$1"));
    }

    private static String told(String text) {
        Dance dance = SheetReader.read("sluice.txt", text).dance().orElseThrow();
        String restarts = dance.restarts().stream()
                .map(restart -> restart.wall() + " after " + restart.afterCount())
                .collect(Collectors.joining(", "));
        return restarts
                + dance.tags().stream()
                        .map(tag -> "tag "
                                + tag.afterWalls().stream().map(String::valueOf).collect(Collectors.joining(", ")))
                        .collect(Collectors.joining());
    }
}
