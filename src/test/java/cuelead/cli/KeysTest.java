package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.steer.KeyHelp;
import cuelead.steer.Order;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import org.junit.jupiter.api.Test;

/** What a terminal sends, to key strokes, to orders. */
class KeysTest {
    /** Control sequences: VT220 (Page Up and Down), xterm in both cursor-key modes, the Linux console. */
    @Test
    void namedKeysAreKnownByTheirSequences() throws IOException {
        assertEquals(
                List.of("up", "down", "right", "left", "home"),
                strokes("\033[A" + "\033OB" + "\033[C" + "\033OD" + "\033[H"));
        assertEquals(List.of("page up", "page down", "home"), strokes("\033[5~" + "\033[6~" + "\033[1~"));
        assertEquals(List.of("enter", "enter", " ", "?"), strokes("\r\n ?"));
    }

    @Test
    void whatIsNotKnownMeansNothingAndLosesNoKeyAfterIt() throws IOException {
        String functionKeys = "\033[15~" + "\033[[E" + "\033OP" + "\033[1;5C" + "\033e" + "\t";
        List<String> strokes = strokes(functionKeys + "q");
        assertEquals("q", strokes.get(strokes.size() - 1));
        assertTrue(strokes.subList(0, strokes.size() - 1).stream().allMatch(String::isEmpty), strokes.toString());
    }

    @Test
    void escapeAloneMeansNothing() throws IOException {
        assertEquals(List.of(""), strokes("\033"));
        assertEquals(List.of(""), strokes("\033["));
    }

    @Property
    void lettersComeAsTheyAre(@ForAll @CharRange(from = '!', to = '~') String text) throws IOException {
        assertEquals(text.chars().mapToObj(Character::toString).toList(), strokes(text));
    }

    /** Letters of one sequence are there at once; after the last nothing comes, then the input ends. */
    private static List<String> strokes(String sent) throws IOException {
        byte[] letters = sent.getBytes(StandardCharsets.US_ASCII);
        int[] at = {0};
        KeyDecoder decoder = new KeyDecoder(patience -> {
            if (at[0] < letters.length) {
                return letters[at[0]++];
            }
            return patience > 0 ? KeyDecoder.NONE_YET : KeyDecoder.END;
        });
        List<String> strokes = new ArrayList<>();
        for (Optional<String> next = decoder.next(); next.isPresent(); next = decoder.next()) {
            strokes.add(next.get());
        }
        return strokes;
    }

    @Test
    void everyStrokeHasOneMeaning() {
        Set<String> all = new HashSet<>();
        for (Order order : Order.values()) {
            for (String stroke : order.strokes()) {
                assertTrue(all.add(stroke), stroke);
                assertEquals(Optional.of(order), Order.by(stroke));
            }
        }
        assertEquals(Optional.empty(), Order.by(""));
        assertEquals(Optional.empty(), Order.by("z"));
    }

    @Test
    void aPresentersClickerGoesOnAndBack() {
        assertEquals(Optional.of(Order.NEXT_SECTION), Order.by("page down"));
        assertEquals(Optional.of(Order.PREVIOUS_SECTION), Order.by("page up"));
    }

    @Test
    void everyOrderOfAPracticeIsExplainedOnce() {
        Set<Order> explained = explainedOnce(KeyHelp.PRACTICE);
        assertEquals(EnumSet.allOf(Order.class), explained);
    }

    @Test
    void theKeysOfALessonAreTheSameOnesAndTwoForItsPace() {
        Set<Order> explained = explainedOnce(KeyHelp.LESSON);
        assertTrue(explained.containsAll(EnumSet.of(Order.SLOWER, Order.FASTER, Order.SECTION_AGAIN)));
    }

    private static Set<Order> explainedOnce(KeyHelp keys) {
        List<Order> explained =
                keys.lines().stream().flatMap(line -> line.orders().stream()).toList();
        Set<Order> once = EnumSet.copyOf(explained);
        assertEquals(explained.size(), once.size());
        return once;
    }

    @Test
    void keysAreShownInEightyColumnsAndInSixty() {
        for (KeyHelp keys : List.of(KeyHelp.PRACTICE, KeyHelp.LESSON)) {
            for (int width : new int[] {59, 79}) {
                List<String> lines = keys.inColumns(width);
                assertEquals((keys.lines().size() + 1) / 2, lines.size());
                assertTrue(lines.stream().allMatch(line -> line.length() <= width), lines.toString());
            }
            assertEquals(keys.lines().size(), keys.inColumns(40).size());
        }
    }
}
