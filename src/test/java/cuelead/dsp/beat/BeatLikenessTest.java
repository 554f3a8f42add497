package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

/** On loudness made up beat by beat, half a second each. */
class BeatLikenessTest {
    private static final int BEATS = 96;
    private static final int BEAT_FRAMES = BandSpectrum.FRAMES_PER_SECOND / 2;
    private static final int BANDS = 74;

    private static final double[] SECONDS = new double[BEATS];

    static {
        Arrays.setAll(SECONDS, i -> i / 2.0);
    }

    /** The band that sounds in each beat, struck at its beginning. */
    private static float[][] loudness(IntUnaryOperator bandOf) {
        float[][] bands = new float[BANDS][BEATS * BEAT_FRAMES];
        for (int beat = 0; beat < BEATS; beat++) {
            float[] band = bands[bandOf.applyAsInt(beat)];
            for (int t = 1; t < BEAT_FRAMES; t++) {
                band[beat * BEAT_FRAMES + t] = (float) Math.exp(-0.1 * t);
            }
        }
        return bands;
    }

    private static BeatLikeness likeness(IntUnaryOperator bandOf) {
        float[][] bands = loudness(bandOf);
        return new BeatLikeness(new BeatSound(bands, SECONDS), new BeatStrokes(bands, SECONDS));
    }

    @Test
    void noveltyIsHighestWhereASectionBegins() {
        BeatLikeness likeness = likeness(beat -> (beat < 40 ? 22 : 50) + beat % 4);
        int highest = 16;
        for (int beat = 16; beat < BEATS - 16; beat++) {
            highest = likeness.novelty(beat, 16) > likeness.novelty(highest, 16) ? beat : highest;
        }
        assertEquals(40, highest);
    }

    /** Bars go question, answer, question, another answer: the questions are alike. */
    @Test
    void pairsBeginWithTheQuestion() {
        BeatLikeness likeness = likeness(beat -> {
            int bar = beat / 4;
            return 24 + (bar % 2 == 0 ? beat % 4 : 4 + bar % 7 * 3 + beat % 3);
        });
        for (int bar = 4; bar < 20; bar += 2) {
            assertTrue(likeness.pairing(4 * bar, 4) > likeness.pairing(4 * bar + 4, 4), "bar " + bar);
        }
    }

    @Test
    void anOddBarIsTheOneBeforeTheBeat() {
        float[][] bands = loudness(beat -> beat == 46 || beat == 47 ? 70 : 2 + beat % 4 * 10);
        BeatStrokes strokes = new BeatStrokes(bands, SECONDS);
        for (int beat = 8; beat < BEATS - 8; beat += 4) {
            assertTrue(beat == 48 || strokes.oddness(48, 4) > strokes.oddness(beat, 4), "beat " + beat);
        }
    }
}
