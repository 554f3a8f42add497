package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BeatsInHandTest {
    private final BeatGrid before = BeatGrid.steady(new Tempo(120), 0.5, 100, 4);
    private final BeatsInHand hand = new BeatsInHand(before, Optional.empty());

    @Test
    void everyStepCanBeTakenBack() throws Exception {
        hand.change(Correction.HALF_BEAT);
        BeatGrid between = hand.beats();
        hand.oneAt(between.beatSeconds(6));
        assertEquals(List.of(" corrected: half a beat later", " corrected: count 1 at 3.75"), hand.comments());
        assertTrue(hand.takeBack());
        assertEquals(between, hand.beats());
        assertTrue(hand.takeBack());
        assertEquals(before, hand.beats());
        assertFalse(hand.takeBack());
        assertFalse(hand.isChanged());
    }

    @Test
    void tapsAreCarriedOnceTheyHaveEnded() {
        for (int i = 0; i < 9; i++) {
            hand.tap(10 + 0.5 * i);
            assertTrue(hand.ended(10 + 0.5 * i + 0.1).isEmpty());
        }
        assertTrue(hand.ended(14.9).isEmpty(), "another tap may come");
        TapRun run = hand.ended(15.4).orElseThrow();
        assertEquals(9, run.taps().count());
        assertEquals(0, hand.taps());
    }

    @Test
    void tooFewTapsAreNotCarried() {
        for (int i = 0; i < BeatsInHand.FEWEST_TAPS - 1; i++) {
            hand.tap(10 + 0.5 * i);
        }
        assertTrue(hand.ended(30).isEmpty());
        hand.tap(40);
        assertEquals(1, hand.taps(), "a tap long after them begins anew");
    }

    @Test
    void tappingAfterAJumpBackBeginsAnew() {
        hand.tap(20);
        hand.tap(20.5);
        hand.tap(12);
        assertEquals(1, hand.taps());
    }
}
