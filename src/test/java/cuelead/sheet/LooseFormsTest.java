package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.FIRST_EIGHT;
import static cuelead.sheet.SheetFixtures.HEAD;
import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.CountOne;
import cuelead.dance.Dance;
import cuelead.dance.Tag;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets as they are typed: headings without brackets, tags on one line, times with minutes, feet in brackets. */
class LooseFormsTest {
    @ParameterizedTest
    @ValueSource(strings = {"9-16 ", "9-16: ", "Counts 9-16 ", "9 - 16  "})
    void aHeadingWithoutBrackets(String counts) {
        String running = SHEET.replace("[9-16] ", counts)
                .replace("1-4 Rock", "9-12 Rock")
                .replace("5-6 Step R to side, touch L beside R\n7-8 Step L to side, touch R beside L\n", "")
                .concat("13-14 Step R to side, touch L beside R\n15-16 Step L to side, touch R beside L\n");
        assertEquals(List.of(), messages(running.replace("[1-8] ", "1-8 ")));
        Dance dance = dance(running);
        assertEquals(SheetDump.rows(dance(SHEET)), SheetDump.rows(dance));
        assertEquals(
                "ROCKING CHAIR, SIDE TOUCHES",
                dance.parts().get(0).sections().get(1).heading());
    }

    /** Where it cannot be told from a line that is danced, one sentence says what to do. */
    @Test
    void aHeadingThatIsReadAsALine() {
        String text = HEAD + FIRST_EIGHT
                + "9-16 Rocking chair, side touches\n8-12 Rock R fwd, recover L, rock R back, recover L, hold\n"
                + "13-14 Step R to side, touch L beside R\n15-16 Step L to side, touch R beside L\n";
        List<String> behind = messages(text).stream()
                .filter(message -> message.contains("comes again"))
                .toList();
        assertEquals(1, behind.size(), behind::toString);
        assertEquals(
                "sheet.txt:9:1: error: \"8-12\" comes again in S1, or too late. If line 8 is a heading, put its counts in"
                        + " brackets, such as \"[1-8]\" or \"[9-16]\".",
                behind.get(0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tag: 4 counts at the end of wall 3: Hip bumps R, L, R, L|3|4|4",
                "Tag - end of wall 3 - 1-4 Hip bumps R, L, R, L|3|4|4",
                "Tag (end of walls 2 and 3): sway R, L|2, 3|2|2",
                "Tag: Sway R, L, R, L (end of wall 3)|3|4|4",
                "Tag: 4 counts at the end of wall 3: R shuffle forward, L shuffle forward|3|4|6",
                "Tag: end of wall 3: Rock R forward, recover, coaster step|3|4|5",
                "Bridge: at the end of wall 3: hold for 4 counts|3|4|4"
            })
    void aTagOnOneLine(String line, String walls, int counts, int steps) {
        String text = SHEET + "Repeat\n" + line + "\n";
        List<Tag> tags = dance(text).tags();
        assertEquals(1, tags.size());
        assertEquals("[" + walls + "]", tags.get(0).afterWalls().toString());
        assertEquals(counts, tags.get(0).part().counts());
        assertEquals(steps, tags.get(0).part().sections().get(0).steps().size());
        assertEquals(List.of(), SheetReader.read("sheet.txt", text).problems());
    }

    @Test
    void aTagOnOneLineIsReadAtItsColumns() {
        assertEquals(
                List.of("13:45 unread"), places(SHEET + "Repeat\nTag: 2 counts at the end of wall 6: Sway R, quonk"));
    }

    /** What stands behind the walls names the tag where counts follow below it. */
    @Test
    void aHeadOfATagMayNameItsFigures() {
        String text = SHEET + "Repeat\nTag: 4 counts at the end of wall 2: SWAYS\n1-4 Sway R, L, R, L\n";
        assertEquals(List.of(), messages(text));
        assertEquals(4, dance(text).tags().get(0).part().counts());
        assertEquals(16, dance(text).counts());
    }

    @ParameterizedTest
    @CsvSource({"0:07.46, 7.46", "1:02, 62", "2:03.5 sec, 123.5", "7.46, 7.46"})
    void countOneInMinutes(String written, double seconds) {
        String text = SHEET.replace("[1-8]", "Count 1: " + written + "\n[1-8]");
        assertEquals(List.of(), messages(text));
        assertEquals(
                new CountOne.AtSeconds(seconds), dance(text).header().countOne().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0:75", ":07", "1:2:3", "a:07", "0:", "-1:07"})
    void countOneThatIsNoTime(String written) {
        assertEquals(List.of("3:10 bad_header"), places(SHEET.replace("[1-8]", "Count 1: " + written + "\n[1-8]")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rocking chair (R forward, L, R back, L)|RLRL",
                "Rocking chair (L forward, R, L back, R)|LRLR",
                "Rocking chair (styling: L hand up)|RLRL",
                "Walk forward (R, L, R, L)|RLRL"
            })
    void feetInBrackets(String words, String feet) {
        String text = SHEET.replace("Rock R fwd, recover L, rock R back, recover L", words);
        List<String> rows = SheetDump.rows(dance(text)).subList(8, 12);
        assertEquals(feet, rows.stream().map(row -> row.split("\t")[3]).reduce("", String::concat));
    }

    /** What the sheet says in brackets wins over the table. */
    @Test
    void waysInBrackets() {
        String text = SHEET.replace(
                "Rock R fwd, recover L, rock R back, recover L", "Rocking chair (R back, L, R forward, L)");
        assertEquals(
                List.of("rock back", "recover place", "rock fwd", "recover place"),
                SheetDump.rows(dance(text)).subList(8, 12).stream()
                        .map(row -> row.split("\t")[4] + " " + row.split("\t")[5])
                        .toList());
    }

    private static Dance dance(String text) {
        return SheetReader.read("sheet.txt", text).dance().orElseThrow();
    }
}
