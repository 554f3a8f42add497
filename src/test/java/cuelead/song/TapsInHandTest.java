package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import org.junit.jupiter.api.Test;

class TapsInHandTest {
    private final BeatGrid beats = BeatGrid.steady(new Tempo(120), 0.5, 100, 4);
    private final TapsInHand taps = new TapsInHand();

    @Test
    void tapsAreCarriedOnceTheyHaveEnded() {
        for (int i = 0; i < 9; i++) {
            taps.tap(10 + 0.5 * i);
            assertTrue(taps.ended(10 + 0.5 * i + 0.1, beats).isEmpty());
        }
        assertTrue(taps.ended(14.9, beats).isEmpty(), "another tap may come");
        TapRun run = taps.ended(15.4, beats).orElseThrow();
        assertEquals(9, run.taps().count());
        assertEquals(0, taps.count());
    }

    @Test
    void tooFewTapsAreNotCarried() {
        for (int i = 0; i < TapsInHand.FEWEST - 1; i++) {
            taps.tap(10 + 0.5 * i);
        }
        assertTrue(taps.ended(30, beats).isEmpty());
        taps.tap(40);
        assertEquals(1, taps.count(), "a tap long after them begins anew");
    }

    @Test
    void tappingAfterAJumpBackBeginsAnew() {
        taps.tap(20);
        taps.tap(20.5);
        taps.tap(12);
        assertEquals(1, taps.count());
    }
}
