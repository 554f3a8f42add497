package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.Sines.Stretch;
import cuelead.time.SampleRate;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Signals and answers of ITU-R BS.1770-4 annex 1 and of EBU Tech 3341 (2016), table 1, cases 1 to 5. */
class IntegratedLoudnessTest {
    private static final double EBU_TOLERANCE_LU = 0.1;

    private static double stereoLufs(int hz, Stretch... stretches) {
        SampleRate rate = new SampleRate(hz);
        float[] interleaved = Sines.stereo(rate, 1_000, stretches);
        BlockPowers powers = new BlockPowers(rate, 2);
        powers.add(interleaved, interleaved.length / 2);
        return IntegratedLoudness.lufs(powers.powers()).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void aFullScaleSineOnOneChannelIsMinusThree(int hz) {
        SampleRate rate = new SampleRate(hz);
        float[] stereo = Sines.stereo(rate, 997, new Stretch(5, 0));
        for (int right = 1; right < stereo.length; right += 2) {
            stereo[right] = 0;
        }
        BlockPowers powers = new BlockPowers(rate, 2);
        powers.add(stereo, stereo.length / 2);
        assertEquals(-3.01, IntegratedLoudness.lufs(powers.powers()).orElseThrow(), 0.02);
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void steadyTonesOfEbuCases1And2(int hz) {
        assertEquals(-23, stereoLufs(hz, new Stretch(20, -23)), EBU_TOLERANCE_LU);
        assertEquals(-33, stereoLufs(hz, new Stretch(20, -33)), EBU_TOLERANCE_LU);
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void softStretchesAreGatedOutInEbuCases3And4(int hz) {
        Stretch loud = new Stretch(60, -23);
        Stretch soft = new Stretch(10, -36);
        Stretch faint = new Stretch(10, -72);
        assertEquals(-23, stereoLufs(hz, soft, loud, soft), EBU_TOLERANCE_LU);
        assertEquals(-23, stereoLufs(hz, faint, soft, loud, soft, faint), EBU_TOLERANCE_LU);
    }

    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void allThatIsNearCountsInEbuCase5(int hz) {
        Stretch side = new Stretch(20, -26);
        assertEquals(-23, stereoLufs(hz, side, new Stretch(20.1, -20), side), EBU_TOLERANCE_LU);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 100})
    void silenceHasNoLoudness(int steps) {
        assertEquals(OptionalDouble.empty(), IntegratedLoudness.lufs(new float[steps]));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 4_410, 100_000})
    void powersDoNotDependOnTheBlockSize(int blockFrames) {
        SampleRate rate = new SampleRate(44_100);
        float[] stereo = Sines.stereo(rate, 440, new Stretch(1, -20), new Stretch(0.55, -3));
        BlockPowers whole = new BlockPowers(rate, 2);
        whole.add(stereo, stereo.length / 2);
        BlockPowers pieces = new BlockPowers(rate, 2);
        for (int at = 0; at < stereo.length / 2; at += blockFrames) {
            int frames = Math.min(blockFrames, stereo.length / 2 - at);
            pieces.add(java.util.Arrays.copyOfRange(stereo, 2 * at, 2 * (at + frames)), frames);
        }
        assertEquals(15, whole.powers().length);
        assertTrue(java.util.Arrays.equals(whole.powers(), pieces.powers()));
    }
}
