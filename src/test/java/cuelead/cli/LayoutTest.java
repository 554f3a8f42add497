package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.plan.Timeline;
import cuelead.steer.Calls;
import cuelead.steer.Follower;
import cuelead.steer.KeyHelp;
import cuelead.steer.Scene;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;

/** The player's lines; the dance is that of {@link Calls}: count 1 at 8 s, a count lasts half a second. */
class LayoutTest {
    private static final Timeline TIMELINE = Calls.timeline(30);
    private static final Follower FOLLOWER =
            new Follower(List.of(Calls.word("side", 7, 1), Calls.word("close", 9, 4), Calls.word("side", 10, 6)));

    private static List<String> shown(int columns, int rows, double songSeconds, Layout.Below below) {
        Scene scene = Scene.of(Calls.moment(TIMELINE, songSeconds), FOLLOWER);
        return new Layout(columns, rows, KeyHelp.PRACTICE)
                .lines(scene, below).stream().map(AttributedString::toString).toList();
    }

    @Test
    void aUsualTerminalShowsEverything() {
        assertEquals(
                List.of(
                        "SMALL" + " ".repeat(62) + "0:09 of 0:30",
                        "Wall 1, facing 12 o'clock",
                        "S1  1  2 [3] 4  5  6  7  8    SIDES AND A HALF",
                        "",
                        "now   close",
                        "next  side",
                        "then  in 6 counts: wall 2 facing 6 o'clock (back)",
                        "",
                        "Playing  lead 2  calls: words  dip 10 dB",
                        "space pause  left/right section  up/down wall  ? keys  q quit"),
                shown(80, 24, 9.2, Layout.Below.HINT));
    }

    /** A song may sound on for some seconds. */
    @Test
    void afterTheLastBeatItIsOver() {
        List<String> lines = shown(80, 24, 33, Layout.Below.HINT);
        assertTrue(lines.get(0).endsWith("0:30 of 0:30"), lines.toString());
        assertTrue(lines.contains("The dance is over"), lines.toString());
        assertTrue(lines.contains("Over  lead 2  calls: words  dip 10 dB"), lines.toString());
    }

    @Test
    void beforeTheDanceTheCountsLeadIntoIt() {
        List<String> lines = shown(80, 24, 7.2, Layout.Below.HINT);
        assertTrue(lines.contains("Starts in 2 beats"), lines.toString());
        assertTrue(lines.contains(" 1  2  3  4  5  6 [7] 8 "), lines.toString());
        assertTrue(lines.contains("then  wall 1 facing 12 o'clock (front)"), lines.toString());
    }

    @Test
    void inFewRowsTheCallsStayLongest() {
        assertEquals(List.of("now   close", "next  side"), shown(80, 3, 9.2, Layout.Below.HINT));
        assertEquals(
                List.of("S1  1  2 [3] 4  5  6  7  8    SIDES AND A HALF", "now   close", "next  side"),
                shown(80, 4, 9.2, Layout.Below.ALL_KEYS));
        assertEquals(
                List.of("0:09  Wall 1  (12 o'clock)  S1  count 3  [close]  next: side"),
                shown(80, 2, 9.2, Layout.Below.HINT));
    }

    @Test
    void inANarrowLineThePlaceGivesWayToTheCalls() {
        assertEquals(List.of("Wall 1  S1  3  [close]  next: side"), shown(45, 2, 9.2, Layout.Below.HINT));
        assertEquals(List.of("[close]  next: side"), shown(25, 2, 9.2, Layout.Below.HINT));
        assertEquals(List.of("[close] side"), shown(14, 2, 9.2, Layout.Below.HINT));
    }

    @Test
    void whatIsTooLongForANarrowTerminalGoesOnInTheNextLine() {
        List<String> lines = shown(40, 20, 9.2, Layout.Below.HINT);
        assertEquals("then  in 6 counts: wall 2 facing 6", lines.get(6));
        assertEquals("      o'clock (back)", lines.get(7));
        assertEquals("Playing  lead 2  calls: words", lines.get(9));
        assertEquals("      dip 10 dB", lines.get(10));
        assertTrue(shown(40, 10, 9.2, Layout.Below.HINT).contains("Playing  lead 2  calls: words  dip 1..."));
    }

    @Test
    void allCountsAreSeenInThirtyColumns() {
        assertEquals(
                "S1  1  2 [3] 4  5  6  7  8 ",
                shown(30, 20, 9.2, Layout.Below.HINT).get(2));
        assertEquals(
                "S1  1 2[3]4 5 6 7 8", shown(22, 20, 9.2, Layout.Below.HINT).get(2));
        assertEquals(" 1 2[3]4 5 6 7 8", shown(18, 20, 9.2, Layout.Below.HINT).get(2));
    }

    /** Each press of the key for the keys shows the next page of them, and after the last they go away. */
    @Test
    void theKeysTurnPageByPageWhereTheyAreTooMany() {
        Layout small = new Layout(40, 10, KeyHelp.PRACTICE);
        List<String> seen = new ArrayList<>();
        int pages = 0;
        for (Layout.Below page = small.turned(Layout.Below.HINT); !page.isHint(); page = small.turned(page)) {
            List<String> lines = shown(40, 10, 9.2, page);
            assertTrue(lines.containsAll(List.of("now   close", "next  side")), lines.toString());
            assertTrue(lines.get(lines.size() - 1).startsWith("? "), lines.toString());
            seen.addAll(lines);
            pages++;
        }
        assertTrue(pages > 1);
        assertTrue(seen.containsAll(KeyHelp.PRACTICE.inColumns(39)), seen.toString());
        Layout large = new Layout(80, 24, KeyHelp.PRACTICE);
        assertTrue(large.turned(large.turned(Layout.Below.HINT)).isHint());
    }

    @Property(tries = 300)
    void nothingWrapsOrScrolls(
            @ForAll @IntRange(min = 2, max = 200) int columns,
            @ForAll @IntRange(min = 1, max = 60) int rows,
            @ForAll @DoubleRange(min = -1, max = 40) double songSeconds,
            @ForAll @IntRange(min = -1, max = 8) int keysPage) {
        List<String> lines = shown(columns, rows, songSeconds, new Layout.Below(keysPage));
        assertTrue(lines.size() <= Math.max(1, rows - 1), lines.toString());
        assertTrue(lines.stream().allMatch(line -> line.length() < columns), lines.toString());
    }
}
