package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.practice.Delays;
import cuelead.steer.DelayWords;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AlignKeysTest {
    @Test
    void aLaterClickInTheEarIsASmallerDelayOfIt() {
        assertEquals("--ear-delay 180", DelayWords.asking(after(new Delays(0, 0.185), "right")));
        assertEquals("--ear-delay 236", DelayWords.asking(after(new Delays(0, 0.185), "down", ",")));
        assertEquals("--ear-delay 0", DelayWords.asking(after(new Delays(0, 0.05), "up", "x")));
    }

    @Test
    void whatIsLaterThanNotLateMeansThatTheLoudspeakerIs() {
        assertEquals("--delay 50", DelayWords.asking(after(Delays.NONE, "up")));
        assertEquals("--delay 250", DelayWords.asking(after(new Delays(0.2, 0), "up")));
    }

    /** Beyond what was given at first, only the difference of both is found: one option says it. */
    @Test
    void whatBothHaveInCommonIsNotTold() {
        assertEquals(
                "--ear-delay 64",
                DelayWords.asking(
                        after(Delays.NONE, "up", "right", "down", "down", "left", "left", ",", ",", ",", ",", "left")));
        assertEquals("--delay 200 --ear-delay 205", DelayWords.asking(after(new Delays(0.2, 0.2), "left")));
        assertEquals(
                "--delay 200 --ear-delay 10",
                DelayWords.asking(after(new Delays(0.2, 0), "up", "left", "left", "down")));
    }

    /** From anywhere within reach a listener comes within half a step of 5 ms. */
    @Property
    void everyDistanceIsReached(@ForAll @IntRange(min = -1_900, max = 1_900) int wantedMillis) {
        Delays delays = Delays.NONE;
        double apart = wantedMillis / 1_000.0;
        while (Math.abs(apart - delays.apartSeconds()) > 0.0026) {
            double missing = apart - delays.apartSeconds();
            String coarse = missing > 0 ? "down" : "up";
            String small = missing > 0 ? "left" : "right";
            delays = AlignKeys.after(Math.abs(missing) > 0.03 ? coarse : small, delays, Delays.NONE);
        }
        assertEquals(apart, delays.apartSeconds(), 0.0026);
    }

    private static Delays after(Delays delays, String... strokes) {
        Delays now = delays;
        for (String stroke : strokes) {
            now = AlignKeys.after(stroke, now, delays);
        }
        return now;
    }
}
