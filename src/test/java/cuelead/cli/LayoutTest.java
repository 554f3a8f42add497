package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.plan.Timeline;
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
        return new Layout(columns, rows)
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

    @Property(tries = 300)
    void nothingWrapsOrScrolls(
            @ForAll @IntRange(min = 2, max = 200) int columns,
            @ForAll @IntRange(min = 1, max = 60) int rows,
            @ForAll @DoubleRange(min = -1, max = 40) double songSeconds,
            @ForAll Layout.Below below) {
        List<String> lines = shown(columns, rows, songSeconds, below);
        assertTrue(lines.size() <= Math.max(1, rows - 1), lines.toString());
        assertTrue(lines.stream().allMatch(line -> line.length() < columns), lines.toString());
    }
}
