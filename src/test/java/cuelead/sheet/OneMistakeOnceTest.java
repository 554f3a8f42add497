package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line that cannot be read says nothing about turns and weight; mistakes elsewhere are still found. */
class OneMistakeOnceTest {
    private static final String SHEET = """
            GULL POST
            Count: 16   Wall: 4   Level: Beginner
            Start with weight on left.
            [1-8] STEP TURNS, SIDE TOUCHES
            1-2 Step R forward, turn 1/8 left (10:30)
            3-4 Step R forward, turn 1/8 left (9:00)
            5-6 Step R to side, touch L beside R
            7-8 Step L to side, touch R beside L (9:00)
            [9-16] ROCKING CHAIR, SIDE TOUCHES
            1-4 Rock R fwd, recover L, rock R back, recover L
            5-6 Step R to side, touch L beside R
            7-8 Step L to side, touch R beside L (9:00)
            Restart: on wall 3 after count 8, facing 3:00
            Repeat
            Tag: at the end of wall 2, facing 6:00
            1-4 Sway R, L, R, L
            """;
    private static final String LINE = "3-4 Step R forward, turn 1/8 left (9:00)";

    @Test
    void theRightSheetIsQuiet() {
        assertEquals(List.of(), messages(SHEET));
    }

    /** Every way in which a line can fail: it is told once, and nothing that follows from it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "3-4 Step R forward, quirk 1/8 left",
                "3-4 Step R forward, turn 1/99 left",
                "3-4 Step R forward, turn left",
                "3-4 Step R forward, turn 1/8",
                "3-4 Quonk",
                "3-4 Step R forward, hold, turn 1/8 left, hold, hold",
                "3-4 Step L forward, jazz box",
                "3-4",
                "3-4 Step R forward",
                "3-4 Vine right",
                "3-4 Step R sailor forward, touch L"
            })
    void oneLineOneMistake(String broken) {
        assertEquals(
                List.of(6),
                SheetFixtures.problems(SHEET.replace(LINE, broken)).stream()
                        .map(problem -> problem.line())
                        .distinct()
                        .toList(),
                () -> messages(SHEET.replace(LINE, broken)).toString());
    }

    /** A second mistake that has nothing to do with the line is told. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Wall: 4 -> Wall: 2 @ 2:0 wrong_walls",
                "Count: 16 -> Count: 32 @ 2:0 count_total",
                "5-6 Step R to side, touch L beside R\n7-8 Step L to side, touch R beside L (9:00)\nRestart -> "
                        + "5-6 Step R to side, touch L beside R\n7-8 Step L to side, touch R beside L (12:00)\nRestart"
                        + " @ 12:39 wrong_clock",
                "wall 3 after count 8, facing 3:00 -> wall 3 after count 8, facing 12:00 @ 13:0 restart_facing",
                "after count 8 -> after count 9 @ 13:0 restart_weight",
                "wall 2, facing 6:00 -> wall 2, facing 12:00 @ 15:0 tag_facing",
                "1-4 Rock R fwd, recover L -> 1-4 Rock R fwd, recover R @ 10:17 impossible_weight",
                "1-4 Sway R, L, R, L -> 1-3 Sway R, L, R @ 15:0 tag_weight",
                "1-2 Step R forward -> 1-2 Step L forward @ 5:5 impossible_weight"
            })
    void aSecondMistakeIsFound(String mistake) {
        String[] parts = mistake.split(" (->|@) ");
        String broken = SHEET.replace(LINE, "3-4 Step R forward, quirk");
        assertEquals(List.of("6:21 unread"), places(broken));
        List<String> found = places(broken.replace(parts[0], parts[1]));
        assertEquals(1, found.stream().filter(parts[2]::equals).count(), found::toString);
    }

    /**
     * Two clocks with nothing but understood steps between them: the first is no proof of what a line in doubt before it
     * turns where the second says otherwise.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "5-6 Quonk while turning # 7-8 Step L to side, touch R beside L (6:00) # 8:39 wrong_clock",
                "5-6 Wibble as you turn # 7-8 Step L to side, touch R beside L (3:00) # 8:39 wrong_clock",
                "5-6 Flurble, turning # 7-8 Step L to side, touch R beside L (12:00) # 8:39 wrong_clock",
                "5-6 Quonk while turning # 7-8 Step L to side, touch R beside L (9:00) # ",
                "5-6 Wibble as you turn # 7-8 Step L to side, touch R beside L # ",
            })
    void clocksThatContradictEachOtherAreTold(String lines) {
        String[] parts = lines.split(" ?# ?", -1);
        String text =
                SHEET.replaceFirst("5-6 Step R to side, touch L beside R\n7-8 [^\n]+", parts[0] + "\n" + parts[1]);
        assertEquals(
                parts[2].isEmpty() ? List.of() : List.of(parts[2]),
                places(text).stream().filter(place -> !place.startsWith("7:")).toList(),
                text);
    }

    @Test
    void theLaterClockIsBlamedWhereTheLineInDoubtTurns() {
        String text = SHEET.replace(LINE, "3-4 Quonk while turning");
        assertEquals(
                List.of(
                        "sheet.txt:12:39: error: The sheet says 6:00 here, but from the 9:00 in line 8 its turns end at 9:00."
                                + " Write 9:00, or correct the turn before it."),
                messages(text.replace("(9:00)\nRestart", "(6:00)\nRestart")).stream()
                        .filter(message -> message.startsWith("sheet.txt:12:"))
                        .toList());
    }

    @Test
    void theFigureThatIsTheCauseIsNamed() {
        assertEquals(
                List.of("sheet.txt:6:1: error: \"3-4\" counts 2 actions, but 4 actions are written:"
                        + " \"Monterey 1/2 turn right\" counts as 4 actions."
                        + " Write it on \"3-6\", or write out what is danced."),
                messages(SHEET.replace(LINE, "3-4 Monterey 1/2 turn right")));
        assertEquals(
                List.of("sheet.txt:10:1: error: \"1-4\" counts 4 actions, but 8 actions are written:"
                        + " \"K-step\" counts as 8 actions. Write it on \"1-8\", or write out what is danced."),
                messages(SHEET.replace("1-4 Rock R fwd, recover L, rock R back, recover L", "1-4 K-step")));
        assertEquals(
                List.of("sheet.txt:6:1: note: \"3-4\" has 2 counts for 3 actions, so they are read on 3 & 4."
                        + " Write the counts between the beats, such as \"3&4\"."),
                messages(SHEET.replace(LINE, "3-4 R shuffle forward")).stream()
                        .filter(message -> message.startsWith("sheet.txt:6:"))
                        .toList());
    }

    /** Behind such a line the free foot is still guessed, from the feet that are named; bumps tell nothing of it. */
    @Test
    void theFreeFootIsGuessed() {
        String text = SHEET.replace(LINE, "3-4 Vine right")
                .replaceFirst("5-6 Step R to side, touch L beside R", "5-6 Hip bumps R, L")
                .replaceFirst("7-8 Step L to side, touch R beside L", "7-8 Step side, touch beside");
        assertEquals(
                List.of(6),
                SheetFixtures.problems(text).stream()
                        .map(problem -> problem.line())
                        .distinct()
                        .toList());
        String touched = text.replace("7-8 Step side, touch beside", "7-8 Touch L beside R, step side");
        List<String> rows =
                SheetDump.rows(SheetReader.read("sheet.txt", touched).dance().orElseThrow());
        assertEquals(
                List.of("L", "L"),
                rows.subList(6, 8).stream().map(row -> row.split("\t")[3]).toList());
    }
}
