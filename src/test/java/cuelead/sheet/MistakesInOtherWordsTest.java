package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.HEAD;
import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same mistake, or the same right thing, in the words of different authors. */
class MistakesInOtherWordsTest {
    private static final String SHEET = """
            NET LOFT
            Count: 24   Wall: 4   Level: Improver
            Start with weight on left.
            [1-8] COASTER STEP, STEP, TOUCH
            1&2 Step R back, step L beside R, step R forward
            3-4 Step L forward, touch R beside L
            5-6 Step R forward, pivot 1/4 left (9:00)
            7-8 Stomp R beside L, stomp L beside R
            [9-16] ROCKING CHAIR
            1-4 Rock R forward, recover L, rock R back, recover L
            5-8 Rock R forward, recover L, rock R back, recover L
            [17-24] SWAYS
            1-4 Sway R, L, R, L
            5-8 Sway R, L, R, L
            Repeat
            """;
    private static final String COASTER = "1&2 Step R back, step L beside R, step R forward";

    @Test
    void theRightSheetIsQuiet() {
        assertEquals(List.of(), messages(SHEET));
    }

    private static List<String> found(String sheet) {
        return places(sheet).stream()
                .map(place -> place.replaceFirst(":\\d+ ", " "))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ROCKING CHAIR|SAILOR STEPS",
                "ROCKING CHAIR|JAZZ BOX",
                "ROCKING CHAIR|VINE RIGHT",
                "ROCKING CHAIR|SAILOR STEP x2",
                "ROCKING CHAIR|KICK BALL CHANGE",
                "ROCKING CHAIR|WEAVE"
            })
    void aHeadingOfOneFigure(String change) {
        String heading = change.split("\\|")[1];
        assertTrue(
                found(SHEET.replace("ROCKING CHAIR", heading)).contains("9 heading_mismatch"),
                () -> found(SHEET.replace("ROCKING CHAIR", heading)).toString());
    }

    /** What begins with the right foot, in a heading; and what goes or turns to the right. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Shuffle R L R, rock L fwd, recover R|R SHUFFLE, ROCK|L SHUFFLE, ROCK",
                "Shuffle R L R, rock L fwd, recover R|RIGHT SHUFFLE FORWARD, ROCK|LEFT SHUFFLE FORWARD, ROCK",
                "R sailor step, step L, touch R beside L|R SAILOR, STEP, TOUCH|L SAILOR, STEP, TOUCH",
                "R coaster step, step L, touch R beside L|RIGHT COASTER, STEP|LEFT COASTER, STEP",
                "R kick ball change, walk R, L|R KICK BALL CHANGE, WALK, WALK|L KICK BALL CHANGE, WALK, WALK",
                "R mambo fwd, walk L, R|R MAMBO, WALK, WALK|L MAMBO, WALK, WALK",
            })
    void theFootOfAFigure(String steps, String right, String wrong) {
        String lines = "1&2 " + steps.replaceFirst(", ", "\n3-4 ");
        assertEquals(0, mismatches(right, lines));
        assertEquals(1, mismatches(wrong, lines));
    }

    @ParameterizedTest
    @CsvSource({"'ROLLING VINE R, TOUCH',0", "'ROLLING VINE, TOUCH',0", "'ROLLING VINE L, TOUCH',1"})
    void theSideOfAWholeTurn(String heading, int wrong) {
        assertEquals(
                wrong,
                mismatches(
                        heading,
                        "1-4 Step R to side turning 1/4 R, step L back turning 1/2 R, step R to side turning 1/4 R, touch L"));
    }

    private static long mismatches(String heading, String lines) {
        return found(HEAD + "[1-8] " + heading + "\n" + lines + "\n5-8 Sway R, L, R, L\n").stream()
                .filter("3 heading_mismatch"::equals)
                .count();
    }

    /** What stands where the heading has a coaster. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1&2 Step R back, step L back, step R forward",
                "1&2 Rock R back, recover L, step R forward",
                "1&2 Shuffle back R, L, R",
                "1&2 Shuffle forward R, L, R",
                "1&2 Step R to side, step L beside R, step R to side",
                "1&2 Step R back, step L to side, step R forward"
            })
    void noCoaster(String steps) {
        assertEquals(List.of("4 heading_mismatch"), found(SHEET.replace(COASTER, steps)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1&2 Coaster step R",
                "1&2 R back, L together, R fwd",
                "1&2 Step back R, close L to R, step forward R",
                "1&2 Step R back, L next to R, cross R over L"
            })
    void aCoasterInOtherWords(String steps) {
        assertEquals(List.of(), messages(SHEET.replace(COASTER, steps)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/4 TURN R", "PIVOT 1/4 RIGHT", "1/4 TURN RIGHT", "¼ R", "STEP 1/4 PIVOT R", "1/2 TURN L"})
    void theOtherSideOfATurn(String turn) {
        assertTrue(found(SHEET.replace("STEP, TOUCH", "STEP TOUCH, " + turn)).contains("4 heading_mismatch"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/4 TURN L", "PIVOT 1/4 LEFT", "1/4 LEFT", "¼ L", "STEP 1/4 PIVOT", "1/4 TURN"})
    void theRightSideOfATurn(String turn) {
        assertEquals(List.of(), messages(SHEET.replace("STEP, TOUCH", "STEP TOUCH, " + turn)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Wall 2 starts facing 6:00|16",
                "Facing 6:00 to begin the second wall.|16",
                "The second wall begins at 6:00|16",
                "You start wall 2 facing the back wall|16",
                "Wall 1 faces 12:00, wall 2 faces 6:00|16",
                "Begin wall 2 facing 6 o'clock|16"
            })
    void whereAWallBegins(String line, int number) {
        assertEquals(List.of(number + " wrong_clock"), found(SHEET + line + "\n"));
        String right = line.replace("6:00", "9:00").replace("6 o'clock", "9 o'clock");
        assertEquals(
                List.of(),
                right.equals(line)
                        ? List.of()
                        : messages(SHEET + right + "\n").stream()
                                .filter(message -> message.contains("face "))
                                .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "No tags, no restarts!",
                "Repeat from the beginning. No tags, no restarts!",
                "There are no restarts and no tags",
                "No restarts",
                "Do it all again. No tags. No restarts. Enjoy!",
                "Without tags or restarts"
            })
    void noRestarts(String line) {
        assertEquals(List.of(), messages(SHEET + line + "\n"));
    }

    /** Turned after the first wall, the dancers begin wall 3 at 6:00 and are at 3:00 after its first 8 counts. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Restart: wall 3: stop after section 1 and begin from section 1 (12:00)",
                "Restart: on the third time through, after 8 counts, facing 12:00",
                "Restart: the 3rd time around dance 8 counts and start again facing 12:00",
                "Restart on the third wall after count 8, facing the front",
                "Wall 3: dance the first 8 counts and start again from section 1, facing 12:00"
            })
    void aRestartThatFacesElsewhere(String line) {
        assertEquals(List.of("16 restart_facing"), found(SHEET + line + "\n"));
    }

    /** Something is over when it has begun; two counts for it are a hold that nobody wrote, or a step that is missing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "3-5 Step L forward, touch R beside L",
                "3&4 Kick R forward, step R beside L",
                "3-5 Step L forward, kick R forward",
                "3&4 Step L forward, touch R beside L",
                "3-5 Step L forward, hitch R",
                "3&4& Touch R heel forward, step R beside L, touch L heel forward"
            })
    void anActionShort(String line) {
        String sheet = SHEET.replace("3-4 Step L forward, touch R beside L", line);
        assertTrue(
                found(sheet).contains("6 incomplete_figure"), () -> found(sheet).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Volta: easy option - walk R, L, R",
                "For the full turn an easier alternative is to walk R, L",
                "(Easy option: walk R, L)",
                "Option: walk R, L instead of turning",
                "Beginners may walk R, L, R instead"
            })
    void easyOptionsAreNoSteps(String line) {
        assertEquals(List.of(), messages(SHEET + line + "\n"));
    }

    private static final String PHRASED = """
            HERRING LANE
            Start with weight on left.
            Sequence: A, B, Tag, A, B
            PART A
            1-4 Step R to side, touch L beside R, step L to side, touch R beside L
            5-8 Walk R, L, R, L
            PART B
            1-4 Rock R forward, recover L, rock R back, recover L
            5-8 Sway R, L, R, L
            TAG
            1-4 Step R to side, touch L beside R, step L to side, touch R beside L
            """;

    @Test
    void thePhrasedSheetIsQuiet() {
        assertEquals(List.of(), messages(PHRASED));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "step L to side, step R beside L",
                "step L to side, close R to L",
                "walk L, R",
                "step L to side, stomp R beside L",
                "rock L to side, recover R"
            })
    void aTagThatEndsOnTheFootOfTheNextPart(String end) {
        String tag = "TAG\n1-4 Step R to side, touch L beside R, ";
        String sheet = PHRASED.replace(tag + "step L to side, touch R beside L", tag + end);
        assertEquals(List.of("11 tag_weight"), found(sheet));
    }

    /** Above the dance it is only said how long the tag is; its steps stand below. */
    @ParameterizedTest
    @ValueSource(strings = {"Tag: 4 counts", "TAG - 4 counts", "Tag (4 counts)"})
    void theLengthOfATagAboveTheDance(String line) {
        assertEquals(List.of(), messages(PHRASED.replace("HERRING LANE\n", "HERRING LANE\n" + line + "\n")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Repeat 1-4 leading with L          5-8",
                "Repeat counts 1-4 leading with L    5-8",
                "Mirror 1-4                         5-8"
            })
    void theCountsOfARepeatAreNoneOfItsLine(String repeat) {
        String sheet = HEAD + """
                Vines
                Vine R, touch                      1-4
                %s
                Sides
                Step R to side, touch L beside R   9-10
                Step L to side, touch R beside L   11-12
                Step R to side, touch L beside R   13-14
                Step L to side, touch R beside L   15-16
                """.formatted(repeat);
        assertEquals(List.of(), messages(sheet));
    }

    @ParameterizedTest
    @CsvSource({
        "HEEL STRUTS, R toe forward, drop R heel, 1",
        "TOE STRUTS, R heel forward, drop R toe, 1",
        "TOE STRUTS, R toe forward, drop R heel, 0",
        "HEEL STRUTS, R heel forward, drop R toe, 0"
    })
    void theOtherSortOfStrut(String heading, String first, String second, int wrong) {
        String right = first + ", " + second;
        String left = right.replace('R', 'L');
        String sheet = HEAD.replace("16", "8") + "[1-8] " + heading + "\n1-4 " + right + ", " + left + "\n5-8 " + right
                + ", " + left + "\n";
        assertEquals(wrong == 0 ? List.of() : List.of("3 heading_mismatch"), found(sheet));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Weave to the left", "Weave to the left, R over L first", "Weave L, cross R over L first"})
    void howAFigureBeginsIsNoFurtherStep(String weave) {
        assertEquals(
                List.of(),
                messages(HEAD.replace("16", "8") + "1-4 " + weave + "\n5-8 Rock R to side, recover L, walk R, L\n"));
    }

    /** Eight counts stand below the bracket, and the next one goes on behind them: only the bracket is wrong. */
    @ParameterizedTest
    @ValueSource(strings = {"[9-18]", "[9-14]", "[9-15]", "[9-24]"})
    void aBracketThatEndsElsewhere(String bracket) {
        assertEquals(List.of("9 bracket_range"), found(SHEET.replace("[9-16]", bracket)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"and put your weight on it", "(put your weight on it)", "putting your weight on it"})
    void whereTheWeightGoes(String words) {
        String stomp = "7-8 Stomp R beside L, stomp L beside R";
        assertEquals(List.of(), messages(SHEET.replace(stomp, stomp + " " + words)));
    }

    /** Sections that are called by what they are counted in. */
    @ParameterizedTest
    @ValueSource(strings = {"after Eight 2", "after Eight 2 (16 counts)", "after section 2", "at the end of Eight 2"})
    void aRestartBehindAnEight(String place) {
        String sheet = SHEET.replace("[1-8]", "EIGHT 1 [1-8]")
                .replace("[9-16]", "EIGHT 2 [9-16]")
                .replace("[17-24]", "EIGHT 3 [17-24]");
        String restart = "Restart: on wall 3 " + place + ", facing ";
        assertEquals(List.of(), messages(sheet.replace("Repeat\n", restart + "3:00\n")));
        assertEquals(List.of("15 restart_facing"), found(sheet.replace("Repeat\n", restart + "12:00\n")));
    }
}
