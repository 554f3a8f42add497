package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sheet says of its tags, restarts, weight and walls against what it has (common practice, no source). */
class ClaimsOfASheetTest {
    private static final String TAG = "\nTAG: after wall 2\n1-4 Sway R, L, R, L\n";
    private static final String RESTART = "\nRestart on wall 3 after count 8\n";

    private static List<String> kinds(String text) {
        return SheetFixtures.places(text).stream()
                .map(place -> place.replaceFirst(":\\d+", ""))
                .toList();
    }

    private static String saying(String line) {
        return SheetFixtures.SHEET.replace(SheetFixtures.FIRST_EIGHT, line + "\n" + SheetFixtures.FIRST_EIGHT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2 tags",
                "Two tags, 1 restart",
                "2 easy tags",
                "No tags",
                "0 tags",
                "Without tags",
                "3 bridges",
                "Tags: 2",
                "Tag 8 counts",
                "Phrased by no one; Tag: 16 counts",
                "With an 8 count tag"
            })
    void tagsThatAreNotThere(String line) {
        assertEquals(List.of("3 wrong_claim"), kinds(saying(line) + TAG + RESTART), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2 restarts",
                "1 tag, 2 restarts",
                "No restarts!",
                "Without restarts",
                "three restarts",
                "Restarts: 3",
                "0 restarts"
            })
    void restartsThatAreNotThere(String line) {
        assertEquals(List.of("3 wrong_claim"), kinds(saying(line) + TAG + RESTART), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 tag, 1 restart",
                "One restart, one tag",
                "1 easy tag",
                "1 Tag & 1 Restart",
                "1 bridge",
                "Restarts: 1   Tags: 1",
                "Tag: 4 counts",
                "2 walls"
            })
    void whatIsThere(String line) {
        assertEquals(List.of(), Blamed.in(SheetFixtures.problems(saying(line) + TAG + RESTART)), line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"No tags, no restarts!", "No tags or restarts", "Without tags", "No restarts", "0 tags"})
    void noneAndNoneIsThere(String line) {
        assertEquals(List.of(), Blamed.in(SheetFixtures.problems(saying(line))), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 restart on wall 4, 1 tag after wall 2",
                "1 restart (wall 3), 1 tag (end of wall 4)",
                "Restart: wall 5. Tag: after wall 2",
                "Restarts: walls 3 and 5",
                "1 restart on the 4th wall",
                "Tag at the end of walls 2 and 4",
                "2 restarts (wall 3), 1 tag (after wall 2)",
                "1 restart (wall 3), 2 tags (after wall 2)",
                "2 restarts on walls 3 and 5, 1 tag after wall 2",
                "Restart wall 3, no tags",
                "1 restart, no tags",
                "Restart: wall 3 (facing 12:00). No tags.",
            })
    void numbersAndWallsAreComparedWithTheTextBelow(String line) {
        assertEquals(List.of("3 wrong_claim"), kinds(saying(line) + TAG + RESTART), line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 restart on wall 3, 1 tag after wall 2",
                "1 restart (wall 3), 1 tag (end of wall 2)",
                "Restart: wall 3. Tag: after wall 2",
                "One easy restart on the 3rd wall",
                "1 restart on the 3rd wall, one tag after the 2nd wall",
                "1 restart (W3)",
                "Restart during every third wall",
                "1 tag before wall 3",
                "16 count, 4 wall; 1 tag",
                "Restart: wall 3 (facing 12:00). 1 tag.",
            })
    void wallsThatAreAsBelow(String line) {
        assertEquals(List.of(), Blamed.in(SheetFixtures.problems(saying(line) + TAG + RESTART)), line);
    }

    @Test
    void eachClaimOfALineIsToldByItself() {
        assertEquals(
                List.of("3 wrong_claim", "3 wrong_claim"),
                kinds(saying("1 restart on wall 4, 2 tags (wall 2)") + TAG + RESTART));
    }

    @ParameterizedTest
    @CsvSource({"(7:00)", "(6:30)", "(13:00)", "[7 o'clock]", "(5:00)", "(facing 8:00)"})
    void noWall(String clock) {
        String text = SheetFixtures.SHEET.replace(
                "7-8 Step L to side, touch R beside L\n[9", "7-8 Step L to side, touch R beside L " + clock + "\n[9");
        assertEquals(List.of("7 wrong_clock"), kinds(text), clock);
    }

    @ParameterizedTest
    @ValueSource(strings = {"(12:00)", "(clap on 7)", "(angle to 11:00)", "(song at 2:14)", "[12 o'clock]"})
    void noMistake(String aside) {
        String text = SheetFixtures.SHEET.replace(
                "7-8 Step L to side, touch R beside L\n[9", "7-8 Step L to side, touch R beside L " + aside + "\n[9");
        assertEquals(List.of(), Blamed.in(SheetFixtures.problems(text)), aside);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Start with weight on right",
                "Weight on R",
                "Start: weight on right foot",
                "Begin with weight on R",
                "Weight starts on the right foot.",
                "Start on the left foot"
            })
    void aWrongStartingWeightIsToldOnce(String line) {
        assertEquals(List.of("3 impossible_weight"), kinds(saying(line) + TAG + RESTART), line);
    }

    @Test
    void aSectionThatStandsTwiceIsToldAsSuch() {
        List<String> told = SheetFixtures.messages(SheetFixtures.SHEET + SheetFixtures.SECOND_EIGHT);
        assertEquals(2, told.size(), told::toString);
        assertEquals(
                1,
                told.stream()
                        .filter(message -> message.contains("This section stands twice"))
                        .count(),
                told::toString);
    }
}
