package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.OwnCall;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet's own calls: in double quotes at the end of a count line, one an action, a hyphen for silence. */
class OwnCallsTest {
    private static final String LINE = "1-4 Rock R fwd, recover L, rock R back, recover L";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"rock, and, back, and\"|1=rock 2=and 3=back 4=and",
                "\"rock,-,back,-\"|1=rock 2= 3=back 4=",
                "\u201crock, \u2013, back, \u2014\u201d|1=rock 2= 3=back 4=",
                "\u201erock, and\u201c|1=rock 2=and",
                "\"haul away, lads\"|1=haul away 2=lads",
                "\"rock\".|1=rock",
                "\"rock, and\" (12:00)|1=rock 2=and",
                "(12:00) \"rock, and\"|1=rock 2=and",
                "\"-, -, -, -\"|1= 2= 3= 4="
            })
    void callsAreReadInOrder(String quotes, String expected) {
        assertEquals(List.of(), messages(with(quotes)));
        assertEquals(expected, calls(with(quotes)));
    }

    @Test
    void callsOnSplitCounts() {
        String text = SHEET.replace("1-2 Step R to side, step L behind R", "1&2 Chasse R \"and, a, one\"");
        assertEquals("1=and 1&=a 2=one", calls(text));
    }

    @Test
    void moreCallsThanActions() {
        String text = with("\"one, two, three, four, five\"");
        assertEquals(
                List.of("sheet.txt:9:51: error: 5 calls are written for 4 actions. "
                        + "Write at most one call an action, \"-\" for silence."),
                messages(text));
        assertEquals("1=one 2=two 3=three 4=four", calls(text));
    }

    @Test
    void anEmptyCall() {
        assertEquals(
                List.of("sheet.txt:9:51: error: Call 2 in these quotes is empty. Write \"-\" for silence."),
                messages(with("\"rock,,back\"")));
    }

    @Test
    void quotesThatAreNotClosed() {
        assertEquals(
                List.of("sheet.txt:9:51: error: These quotes are not closed. Add a second \" at the end of the line."),
                messages(with("\"rock, and")));
        assertEquals("", calls(with("\"rock, and")));
    }

    @Test
    void quotesInTheMiddleOfALine() {
        assertEquals(
                List.of("sheet.txt:4:20: warning: Quotes in the middle of a line are not read. "
                        + "Own calls stand at the end of the line."),
                messages(SHEET.replace("1-2 Step R to side,", "1-2 Step R to side \"low\",")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "[9-16] ROCKING CHAIR \"rock it\"|8:22",
                "\"rock, and, back, and\"|8:1",
                "\u201crock, and\u201d|8:1",
                "Rock and roll \"rock, and\"|8:15"
            })
    void quotesWithoutCounts(String line, String place) {
        String text = line.startsWith("[")
                ? SHEET.replace("[9-16] ROCKING CHAIR, SIDE TOUCHES", line)
                : SHEET.replace("[9-16]", line + "\n[9-16]");
        assertTrue(
                messages(text)
                        .contains("sheet.txt:" + place
                                + ": warning: These quotes stand on a line without counts, so they are not called. "
                                + "Own calls stand at the end of a line that begins with counts."),
                messages(text).toString());
        assertEquals("", calls(text));
    }

    private static String with(String quotes) {
        return SHEET.replace(LINE, LINE + " " + quotes);
    }

    private static String calls(String text) {
        List<OwnCall> calls =
                SheetReader.read("sheet.txt", text).dance().orElseThrow().parts().get(0).sections().stream()
                        .flatMap(section -> section.ownCalls().stream())
                        .toList();
        return String.join(
                " ",
                calls.stream()
                        .map(call -> call.count().label() + "=" + call.words())
                        .toList());
    }
}
