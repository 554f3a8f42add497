package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandPassTest {
    /** What is let through of a tone: the highest sample by the highest that went in, where phase is met often. */
    private static double share(double hz, SampleRate rate) {
        BandPass band = new BandPass(1_000, 4_000, rate);
        int reach = BandPass.reachFrames(rate);
        int frames = rate.framesIn(0.1);
        float[] tone = new float[frames + 2 * reach];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = (float) Math.sin(2 * Math.PI * hz * (i - reach) / rate.hz());
        }
        float[] passed = new float[frames];
        band.run(tone, reach, passed, frames);
        double together = 0;
        double alone = 0;
        for (int i = 0; i < frames; i++) {
            together += passed[i] * tone[reach + i];
            alone += tone[reach + i] * tone[reach + i];
        }
        return together / alone; // in phase: a delayed tone would have less
    }

    @ParameterizedTest
    @ValueSource(ints = {16_000, 44_100, 48_000, 96_000})
    void theBandIsLetThroughWithoutDelayAndNothingElse(int hz) {
        SampleRate rate = new SampleRate(hz);
        for (double outside : new double[] {50, 440, 800, 4_200, 6_000, 7_900}) {
            assertEquals(0, share(outside, rate), 0.004, outside + " Hz");
        }
        for (double inside : new double[] {1_200, 2_000, 3_800}) {
            assertEquals(1, share(inside, rate), 0.004, inside + " Hz");
        }
        assertEquals(0.5, share(1_000, rate), 0.01);
        assertEquals(0.5, share(4_000, rate), 0.01);
    }

    @ParameterizedTest
    @ValueSource(ints = {8_000, 6_000})
    void aBandBeyondHalfTheRateIsOpenUpwards(int hz) {
        SampleRate rate = new SampleRate(hz);
        assertEquals(1, share(0.47 * hz, rate), 0.004);
        assertEquals(0, share(500, rate), 0.004);
    }

    /** Longer than 6 ms it would be heard before a stroke. */
    @ParameterizedTest
    @ValueSource(ints = {8_000, 44_100, 192_000})
    void itReachesAFewMillisecondsOnly(int hz) {
        SampleRate rate = new SampleRate(hz);
        assertTrue(rate.secondsAt(BandPass.reachFrames(rate)) < 0.006);
    }
}
