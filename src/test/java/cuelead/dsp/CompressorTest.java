package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cuelead.time.SampleRate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The static curve and the time constants of Giannoulis, Massberg and Reiss 2012. */
class CompressorTest {
    private static final SampleRate RATE = new SampleRate(48_000);
    private static final Compressor THREE_TO_ONE = new Compressor(20, 3, 0.003, 0.060);

    @Property(tries = 20)
    void everyThirdDecibelAboveTheThresholdIsKept(@ForAll @DoubleRange(min = 0, max = 19) double belowDb) {
        double[] samples = steps(1, Math.pow(10, -belowDb / 20));
        THREE_TO_ONE.run(samples, RATE);
        double loudDb = 20 * Math.log10(samples[47_999]);
        double softDb = 20 * Math.log10(samples[95_999]);
        assertEquals(-20 + 20.0 / 3, loudDb, 0.05);
        assertEquals(belowDb / 3, loudDb - softDb, 0.05);
    }

    @Test
    void whatIsBelowTheThresholdStays() {
        double[] samples = steps(1, 0.05);
        THREE_TO_ONE.run(samples, RATE);
        assertEquals(0.05, samples[95_999], 1e-12);
    }

    /** After one time constant the detector has gone 63 % of the way up from rest. */
    @Test
    void aRiseIsFollowedWithinThreeMilliseconds() {
        double[] samples = steps(1, 1);
        THREE_TO_ONE.run(samples, RATE);
        double detected = 1 - Math.exp(-1);
        double expected = Math.pow(detected / 0.1, 1 / 3.0 - 1);
        assertEquals(expected, samples[144 - 1], 0.002);
    }

    /** From 1 to 0.2, one time constant after the step: 0.2 + 0.8 / e. */
    @Test
    void aFallIsFollowedWithinSixtyMilliseconds() {
        double[] samples = steps(1, 0.2);
        THREE_TO_ONE.run(samples, RATE);
        double detected = 0.2 + 0.8 * Math.exp(-1);
        double expected = 0.2 * Math.pow(detected / 0.1, 1 / 3.0 - 1);
        assertEquals(expected, samples[48_000 + 2_880 - 1], 0.001);
    }

    @Property(tries = 20)
    void theLevelThatASoundComesAtDoesNotMatter(@ForAll @DoubleRange(min = 0.01, max = 10) double level) {
        double[] samples = steps(level, 0.3 * level);
        double[] plain = steps(1, 0.3);
        THREE_TO_ONE.run(samples, RATE);
        THREE_TO_ONE.run(plain, RATE);
        assertEquals(plain[50_000] * level, samples[50_000], 1e-9 * level);
    }

    @Test
    void silenceStaysSilence() {
        double[] samples = new double[100];
        THREE_TO_ONE.run(samples, RATE);
        assertEquals(0, samples[99]);
    }

    @Test
    void aRatioBelowOneIsNoCompressor() {
        assertThrows(IllegalArgumentException.class, () -> new Compressor(20, 0.5, 0.003, 0.060));
    }

    /** A second at one level, a second at another. */
    private static double[] steps(double first, double second) {
        double[] samples = new double[96_000];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = i < 48_000 ? first : second;
        }
        return samples;
    }
}
