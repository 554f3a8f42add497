package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FoldDownTest {
    /** Recommendation ITU-R BS.775-3, annex 4, table 2: centre and surrounds 3 dB down. */
    private static final double SQRT_HALF = Math.sqrt(0.5);

    private static float[] folded(float... frame) {
        float[] stereo = new float[4];
        new FoldDown(frame.length).fold(frame, stereo, 1, 1);
        assertEquals(0, stereo[0]);
        assertEquals(0, stereo[1]);
        return Arrays.copyOfRange(stereo, 2, 4);
    }

    @Test
    void monoIsDoubledAndStereoStays() {
        assertArrayEquals(new float[] {0.3f, 0.3f}, folded(0.3f));
        assertArrayEquals(new float[] {0.3f, -0.7f}, folded(0.3f, -0.7f));
    }

    @Test
    void surroundKeepsTheRecommendationsRatios() {
        float[] left = folded(1, 0, 0, 0, 0, 0);
        assertEquals(0, left[1]);
        assertEquals(SQRT_HALF, folded(0, 0, 1, 0, 0, 0)[0] / left[0], 1e-6);
        assertEquals(SQRT_HALF, folded(0, 0, 1, 0, 0, 0)[1] / left[0], 1e-6);
        assertArrayEquals(new float[] {0, 0}, folded(0, 0, 0, 1, 0, 0));
        assertEquals(SQRT_HALF, folded(0, 0, 0, 0, 1, 0)[0] / left[0], 1e-6);
        assertEquals(0, folded(0, 0, 0, 0, 1, 0)[1]);
        assertEquals(SQRT_HALF, folded(0, 0, 0, 0, 0, 1)[1] / left[0], 1e-6);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void fullScaleOnAllChannelsStaysFullScale(int channels) {
        float[] all = new float[channels];
        Arrays.fill(all, 1);
        float[] stereo = folded(all);
        assertEquals(stereo[0], stereo[1], 1e-6);
        // Six channels lose the low one, which has no place in stereo.
        assertEquals(1, stereo[0], 1e-6);
    }
}
