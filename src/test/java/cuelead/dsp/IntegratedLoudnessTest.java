package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.Sines.Stretch;
import cuelead.time.SampleRate;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Signals and answers of ITU-R BS.1770-4 annex 1, of EBU Tech 3341 (2016), table 1, cases 1 to 6, and signals made after
 * those of ITU-R BS.2217. (Cases 7 and 8 are recordings, 9 to 14 are about other time scales.)
 */
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

    /** Five channels: left, right, centre, and two at the sides that count 1.41 times (BS.1770-4, table 4). */
    @ParameterizedTest
    @ValueSource(ints = {44_100, 48_000})
    void allChannelsAddUpInEbuCase6(int hz) {
        SampleRate rate = new SampleRate(hz);
        double sideDb = -30 + 10 * Math.log10(1.41);
        double[] levels = {-28, -28, -24, sideDb, sideDb};
        float[] sine = Sines.stereo(rate, 1_000, new Stretch(20, 0));
        float[] five = new float[sine.length / 2 * levels.length];
        for (int i = 0; i < five.length; i++) {
            int frame = i / levels.length;
            five[i] = (float) (Math.pow(10, levels[i % levels.length] / 20) * sine[2 * frame]);
        }
        BlockPowers powers = new BlockPowers(rate, levels.length);
        powers.add(five, five.length / levels.length);
        assertEquals(-23, IntegratedLoudness.lufs(powers.powers()).orElseThrow(), EBU_TOLERANCE_LU);
    }

    /** BS.2217: {@code 1770-2_Comp_23LKFS_..._2ch} and {@code 1770-2_Comp_24LKFS_..._2ch}. */
    @ParameterizedTest
    @CsvSource({
        "25, -24", "100, -24", "500, -24", "1000, -24", "2000, -24", "10000, -24",
        "25, -23", "100, -23", "500, -23", "1000, -23", "2000, -23", "10000, -23"
    })
    void tonesOfAnyFrequencyHaveTheLoudnessThatTheTablesGive(double hz, double lufs) {
        // both channels: twice the power of one sine, which is half of its height's square
        double dbfs = lufs + 0.691 - Tables.gainDb(hz);
        SampleRate rate = new SampleRate(48_000);
        float[] stereo = Sines.stereo(rate, hz, new Stretch(20, dbfs));
        BlockPowers powers = new BlockPowers(rate, 2);
        powers.add(stereo, stereo.length / 2);
        assertEquals(lufs, IntegratedLoudness.lufs(powers.powers()).orElseThrow(), EBU_TOLERANCE_LU);
    }

    /** BS.2217: {@code 1770-2_Comp_AbsGateTest}, -69.5 LKFS; what lies below -70 does not count. */
    @Test
    void whatIsBelowTheAbsoluteGateDoesNotCount() {
        Stretch above = new Stretch(20, -69.5);
        Stretch below = new Stretch(40, -71);
        assertEquals(-69.5, stereoLufs(48_000, below, above, below), EBU_TOLERANCE_LU);
    }

    /** BS.2217: {@code 1770-2_Comp_RelGateTest}, -10 LKFS; what lies 10 below the mean of all does not count. */
    @Test
    void whatIsBelowTheRelativeGateDoesNotCount() {
        // together -12.9 LUFS, so the gate is at -22.9
        assertEquals(-10, stereoLufs(48_000, new Stretch(60, -10), new Stretch(60, -24)), EBU_TOLERANCE_LU);
        // and what lies above it does
        double both = 10 * Math.log10((Math.pow(10, -1) + Math.pow(10, -2)) / 2);
        assertEquals(both, stereoLufs(48_000, new Stretch(60, -10), new Stretch(60, -20)), EBU_TOLERANCE_LU);
    }

    /** BS.2217: {@code 1770-2_Comp_18LKFS_FrequencySweep}: a sweep whose tones are as loud, each for itself, at 48 kHz. */
    @Test
    void aSweepIsAsLoudAsItsTones() {
        SampleRate rate = new SampleRate(48_000);
        int frames = 30 * rate.hz();
        float[] stereo = new float[2 * frames];
        double phase = 0;
        for (int i = 0; i < frames; i++) {
            double hz = 30 * Math.pow(500, (double) i / frames);
            phase += 2 * Math.PI * hz / rate.hz();
            double height = Math.pow(10, (-18 + 0.691 - Tables.gainDb(hz)) / 20);
            stereo[2 * i] = (float) (height * Math.sin(phase));
            stereo[2 * i + 1] = stereo[2 * i];
        }
        BlockPowers powers = new BlockPowers(rate, 2);
        powers.add(stereo, frames);
        assertEquals(-18, IntegratedLoudness.lufs(powers.powers()).orElseThrow(), EBU_TOLERANCE_LU);
    }

    /** The two filters as BS.1770-4 prints them for 48 kHz (annex 1, tables 1 and 2). */
    private static final class Tables {
        private static final double[] SHELF = {
            1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585
        };
        private static final double[] HIGH_PASS = {1, -2, 1, -1.99004745483398, 0.99007225036621};

        static double gainDb(double hz) {
            double w = 2 * Math.PI * hz / 48_000;
            return 10 * Math.log10(power(SHELF, w) * power(HIGH_PASS, w));
        }

        private static double power(double[] filter, double w) {
            return power(filter[0], filter[1], filter[2], w) / power(1, filter[3], filter[4], w);
        }

        private static double power(double c0, double c1, double c2, double w) {
            double real = c0 + c1 * Math.cos(w) + c2 * Math.cos(2 * w);
            double imaginary = c1 * Math.sin(w) + c2 * Math.sin(2 * w);
            return real * real + imaginary * imaginary;
        }
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
