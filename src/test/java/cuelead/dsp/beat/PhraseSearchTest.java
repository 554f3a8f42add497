package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;

/** Songs in which nothing sounds: only what the network hears tells bars and phrases, and how songs usually begin. */
class PhraseSearchTest {
    private static final int BANDS = 74;
    private static final int FRAMES_A_BEAT = 25;
    private static final int BEATS = 66;
    private static final float HARDLY_A_FIRST = 0.01f;
    private static final float A_FIRST = 0.6f;

    /** The count of the first beat of a song in fours. */
    private static int firstCount(int pickupBeats, float firstOfOddBars, float firstOfEvenBars) {
        float[] beat = new float[FRAMES_A_BEAT * (BEATS + 1)];
        float[] downbeat = new float[beat.length];
        double[] seconds = new double[BEATS];
        for (int i = 0; i < BEATS; i++) {
            int inEight = Math.floorMod(i - pickupBeats, 8);
            int frame = FRAMES_A_BEAT * i;
            seconds[i] = (double) frame / BandSpectrum.FRAMES_PER_SECOND;
            beat[frame] = 0.9f;
            downbeat[frame] = inEight == 0 ? firstOfOddBars : inEight == 4 ? firstOfEvenBars : HARDLY_A_FIRST;
        }
        Activations heard = new Activations(beat, downbeat, new float[beat.length]);
        HeardBeats beats = new HeardBeats(new float[BANDS][beat.length], heard, seconds);
        return PhraseSearch.search(beats, OddsTable.load()).counts().get(0);
    }

    @Test
    void aSongBeginsWithAPhraseWhereLittleSpeaksForSomethingElse() {
        assertEquals(1, firstCount(0, A_FIRST, A_FIRST));
        assertEquals(1, firstCount(0, A_FIRST, 0.62f));
    }

    @Test
    void orWithAPickup() {
        assertEquals(7, firstCount(2, A_FIRST, A_FIRST));
    }

    @Test
    void butHalfWayThroughOneWhereMuchSpeaksForIt() {
        assertEquals(5, firstCount(0, 0.3f, 0.88f));
    }

    @Test
    void aTableWithoutTheCostOfStartsIsRefused() {
        String whole = """
                bar CONSTANT - 1
                phrase CONSTANT - 1
                cost AFTER_A_BAR - 1
                cost AFTER_HALF_A_BAR - 1
                cost ELSEWHERE - 1
                metre 2 - 1
                metre 3 - 1
                metre 4 - 1
                start PICKUP - 3
                """;
        assertThrows(NoSuchElementException.class, () -> OddsTable.read(whole));
        assertEquals(
                4,
                OddsTable.read(whole + "start ELSEWHERE - 4\n").starts().get(OddsTable.Start.ELSEWHERE),
                "the same with it");
    }
}
