package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RestartsAndTagsTest {
    private static final String TRY_RESTART = " Write it like \"Restart: on wall 3 after count 16\".";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Restart: on wall 3 after count 8|3 8",
                "Restart on walls 2 and 5 after count 8|2 8, 5 8",
                "On wall 3, dance up to count 8, then restart|3 8",
                "*** Restart on the 2nd wall after 8 counts|2 8",
                "Restart: wall 2, after section 1|2 8",
                "Rst: wall 2 after S1|2 8",
                "On the second wall, dance bars 1-2 only and recommence|2 8",
                "On wall 2, dance up to the end of bar 2, then restart|2 8",
                "Re-start on wall 2 after 8 counts|2 8",
                "Restart on wall 2: dance to count 7, then for count 8 touch R next to L instead, and restart|2 8",
                "Restart: on wall 2 dance to count 7, then\\n  on count 8 touch R next to L instead of the step, and restart|2 8",
                "Restart: on wall 2 (the one after the tag) dance only\\nthe first 8 counts and begin again|2 8",
                "Restart: wall 2, after count 4 of section 2|2 12",
                "Restart: W2 after c.8|2 8",
                "Restart: wall 2 after c8|2 8"
            })
    void restartsAreRead(String line, String expected) {
        assertEquals(List.of(), messages(SHEET + line.replace("\\n", "\n")));
        String read = String.join(
                ", ",
                dance(SHEET + line.replace("\\n", "\n")).restarts().stream()
                        .map(restart -> restart.wall() + " " + restart.afterCount())
                        .toList());
        assertEquals(expected, read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Restart: on wall 0 after count 8|12:1 no_such_wall",
                "Restart: on wall 900 after count 8|12:1 no_such_wall",
                "Restart: after count 8|12:1 restart_unclear",
                "Restart: on wall 3|12:1 restart_unclear",
                "Restart: on wall 3 after count 0|12:1 restart_unclear",
                "Restart: on wall 3 after section 7|12:1 restart_unclear",
                "Restart: on wall 3 after count 16|12:0 restart_late",
                "Restart: on wall 3 after count 40|12:0 restart_late",
                "Restart: on wall 3 after count 6|12:0 restart_weight",
                "Restart: on wall 3 after count 8, facing 6:00|12:0 restart_facing",
                "Tag: at the end of wall 0\\n1-4 Sway R, L, R, L|12:1 no_such_wall",
                "Tag\\n1-4 Sway R, L, R, L|12:1 tag_unclear",
                "Tag: at the end of wall 2|12:1 empty_tag",
                "Tag: at the end of wall 2, facing 3:00\\n1-4 Sway R, L, R, L|12:0 tag_facing",
                "Tag: at the end of wall 2\\n1 Step R to side|12:0 tag_weight",
                "Sequence: A A B|12:15 unknown_part"
            })
    void whatCannotBeIsTold(String lines, String place) {
        String text = SHEET
                + (lines.startsWith("Restart") || lines.startsWith("Sequence") ? "" : "Repeat\n")
                + lines.replace("\\n", "\n");
        int shift = text.contains("Repeat\n") ? 1 : 0;
        String expected = place.replace("12:", (12 + shift) + ":");
        assertTrue(places(text).contains(expected), places(text).toString());
    }

    @Test
    void aRestartAfterCountNought() {
        assertEquals(
                List.of("sheet.txt:12:1: error: A restart after count 0 leaves nothing of its wall." + TRY_RESTART),
                messages(SHEET + "Restart: on wall 3 after count 0"));
    }

    @Test
    void aRestartBeyondTheDance() {
        assertEquals(
                List.of("sheet.txt:12: error: This restart comes after count 40, but the dance has only 16. "
                        + "Check the count."),
                messages(SHEET + "Restart: on wall 3 after count 40"));
    }

    @Test
    void oneWallCannotRestartTwice() {
        String text = SHEET + "Restart: on wall 3 after count 8\nRestart: on wall 3 after count 12\n";
        assertEquals(List.of("13:1 restart_twice"), places(text));
        assertEquals(1, dance(text).restarts().size());
    }

    /** Marked at its place and told below is one restart; a mark alone does not say the wall. */
    @Test
    void marksWithinTheDance() {
        String marked = SHEET.replace("touch R beside L\n[9", "touch R beside L (restart here)\n[9");
        assertEquals(
                List.of("sheet.txt:7:1: error: A restart is marked here, but it is not said on which wall."
                        + TRY_RESTART),
                messages(marked));
        String told = marked + "Restart: on wall 3 after count 8, facing 12:00\n";
        assertEquals(List.of(), messages(told));
        assertEquals(
                List.of(8),
                dance(told).restarts().stream().map(Restart::afterCount).toList());
    }

    @Test
    void aTagMayHaveSectionsOfItsOwn() {
        String text = SHEET + "Tag: 12 counts, at the end of wall 2\n[1-8] Sways\n1-8 Sway R, L, R, L, R, L, R, L\n"
                + "[9-12] Stomps\n1-4 Stomp R, stomp L, stomp R, stomp L\n";
        Dance dance = dance(text.replace("[9-12]", "[9-12]"));
        assertEquals(List.of(), messages(text));
        assertEquals(12, dance.tags().get(0).part().counts());
        assertEquals(16, dance.counts());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "T1: Sways|T2: Stomps|1-4",
                "T1 - Sways|T2 - Stomps|9-12",
                "T1. SWAYS|T2. STOMPS|1-4",
                "Tag section 1: Sways|Tag section 2: Stomps|9-12",
            })
    void sectionsOfATagMayBeNumbered(String first, String second, String counts) {
        String text = SHEET + "Tag: 12 counts, at the end of wall 2\n" + first
                + "\n1-8 Sway R, L, R, L, R, L, R, L\n" + second + "\n" + counts
                + " Stomp R, stomp L, stomp R, stomp L\n";
        assertEquals(List.of(), messages(text));
        assertEquals(
                List.of(8, 4),
                dance(text).tags().get(0).part().sections().stream()
                        .map(Section::length)
                        .toList());
    }

    private static Dance dance(String text) {
        return SheetReader.read("sheet.txt", text).dance().orElseThrow();
    }
}
