package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Loudness that rises at known frames only: low every other beat, high on those between. */
class StrokePatternTest {
    private static final int BEAT_FRAMES = 25;
    private static final int BEATS = 40;
    private static final int BANDS = 74;
    private static final int STROKE_FRAMES = 4;
    private static final int LOW_BAND = 2;
    private static final int HIGH_BAND = 68;
    private static final float[][] GROOVE = groove();

    private static float[][] groove() {
        float[][] loudness = new float[BANDS][(BEATS + 2) * BEAT_FRAMES];
        for (int beat = 0; beat < BEATS; beat++) {
            float[] band = loudness[beat % 2 == 0 ? LOW_BAND : HIGH_BAND];
            for (int t = 0; t < STROKE_FRAMES; t++) {
                band[beat * BEAT_FRAMES + t] = 1;
            }
        }
        return loudness;
    }

    /** From one beat to another, all so many beats late. */
    private static StrokePattern pattern(int from, int to, double late) {
        double[] seconds = IntStream.range(from, to)
                .mapToDouble(i -> (i + late) * BEAT_FRAMES / BandSpectrum.FRAMES_PER_SECOND)
                .toArray();
        return StrokePattern.of(GROOVE, seconds);
    }

    @Test
    void stretchesOnTheBeatAreAlikeWhicheverBeatIsLoud() {
        assertEquals(0, pattern(2, 12, 0).distance(pattern(15, 35, 0)), 1e-6);
    }

    @Test
    void aStretchBetweenTheBeatsIsUnlike() {
        assertTrue(pattern(2, 12, 0).distance(pattern(14, 34, 0.5)) > 0.1);
    }

    @Test
    void anOddNumberOfBeatsIsMeasuredAlike() {
        assertEquals(0, pattern(2, 9, 0).distance(pattern(14, 33, 0)), 1e-6);
    }

    @Test
    void stretchesTogetherAreLikeEachOfThem() {
        StrokePattern all = StrokePattern.ofAll(List.of(pattern(2, 12, 0), pattern(13, 20, 0), pattern(21, 36, 0)));
        assertEquals(0, all.distance(pattern(4, 30, 0)), 1e-6);
    }
}
