package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.SampleRate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gains by the analogue prototypes: Butterworth |H|^2 = 1 / (1 + (f / f0)^4), -3.01 dB at its corner; a bell its own. */
class BiquadTest {
    private static final SampleRate RATE = new SampleRate(48_000);

    @ParameterizedTest
    @CsvSource({"120, -3.01", "60, -12.30", "240, -0.26", "3000, 0.00"})
    void aHighPassFallsByTwelveDecibelsAnOctave(double hz, double db) {
        assertEquals(db, gainDb(Biquad.highPass(120, RATE), hz), 0.05);
    }

    @ParameterizedTest
    @CsvSource({"1000, -3.01", "500, -0.26", "2000, -12.40", "50, 0.00"})
    void aLowPassFallsByTwelveDecibelsAnOctave(double hz, double db) {
        assertEquals(db, gainDb(Biquad.lowPass(1_000, RATE), hz), 0.1);
    }

    @ParameterizedTest
    @CsvSource({"2800, 5", "50, 0", "23000, 0"})
    void aBellRaisesItsMiddleOnly(double hz, double db) {
        assertEquals(db, gainDb(Biquad.bell(2_800, 5, 0.9, RATE), hz), 0.05);
    }

    @ParameterizedTest
    @CsvSource({"120, -6.02", "1000, 0"})
    void bothWaysIsTwiceAsMuchAndLate(double hz, double db) {
        double[] sine = sine(hz);
        double[] filtered = sine.clone();
        Biquad.highPass(120, RATE).runBothWays(filtered);
        double product = 0;
        double power = 0;
        for (int i = 12_000; i < 36_000; i++) {
            product += sine[i] * filtered[i];
            power += sine[i] * sine[i];
        }
        assertEquals(db, 20 * Math.log10(product / power), 0.05, "in phase, so the product tells the gain");
    }

    private static double gainDb(Biquad filter, double hz) {
        double[] samples = sine(hz);
        filter.run(samples);
        double power = 0;
        for (int i = 24_000; i < 48_000; i++) {
            power += samples[i] * samples[i];
        }
        return 10 * Math.log10(power / 12_000);
    }

    /** One second; whole periods in its second half. */
    private static double[] sine(double hz) {
        double[] samples = new double[48_000];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Math.sin(2 * Math.PI * hz * i / 48_000);
        }
        return samples;
    }
}
