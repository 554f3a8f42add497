package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RecurrenceTest {
    private static final int BANDS = 74;
    private static final int BEATS = 64;
    private static final int FRAMES_A_BEAT = 25;
    /** Places among 1, 2, 4 and 8 beats apart. */
    private static final int TWO = 1;

    private static final int FOUR = 2;
    private static final int EIGHT = 3;

    /** Each beat of a bar has a loud band of its own, struck at its beginning. */
    private static float[][] bars(int beatsPerBar) {
        float[][] loudness = new float[BANDS][BEATS * FRAMES_A_BEAT];
        for (int t = 0; t < loudness[0].length; t++) {
            int beat = t / FRAMES_A_BEAT % beatsPerBar;
            loudness[25 + 7 * beat][t] = t % FRAMES_A_BEAT < 10 ? 3 : 1;
        }
        return loudness;
    }

    private static double[] beats(int count, double seconds) {
        return IntStream.range(0, count).mapToDouble(i -> i * seconds).toArray();
    }

    @Test
    void whatIsPlayedComesBackAfterABar() {
        Recurrence fours = new Recurrence(bars(4), beats(BEATS, 0.5));
        for (double[] unlike : new double[][] {fours.sound(), fours.notes()}) {
            assertTrue(unlike[FOUR] < 0.1 * unlike[TWO], Arrays.toString(unlike));
        }
        Recurrence twos = new Recurrence(bars(2), beats(BEATS, 0.5));
        assertTrue(twos.sound()[TWO] < 0.1, Arrays.toString(twos.sound()));
    }

    @Test
    void heardTwiceAsFastItComesBackAfterTwiceAsMany() {
        Recurrence fast = new Recurrence(bars(4), beats(2 * BEATS, 0.25));
        assertTrue(fast.sound()[EIGHT] < 0.1 * fast.sound()[FOUR], Arrays.toString(fast.sound()));
        assertTrue(fast.strokes()[EIGHT] < 0.5 * fast.strokes()[FOUR], Arrays.toString(fast.strokes()));
    }

    @Test
    void theMeanOfTheLagsIsOne() {
        double[] unlike = new Recurrence(bars(3), beats(BEATS, 0.5)).strokes();
        assertEquals(1, Arrays.stream(unlike).average().orElseThrow(), 1e-9);
    }

    @Test
    void silenceSaysNothing() {
        Recurrence silent = new Recurrence(new float[BANDS][500], beats(16, 0.5));
        assertArrayEquals(new double[] {1, 1, 1, 1}, silent.sound(), 1e-3);
        assertArrayEquals(new double[] {1, 1, 1, 1}, silent.notes(), 1e-3);
    }
}
