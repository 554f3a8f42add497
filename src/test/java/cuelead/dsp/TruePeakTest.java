package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TruePeakTest {
    /** EBU Tech 3341 (2016), table 1, cases 15 to 19: +0.2 and -0.4 dB are allowed. */
    @ParameterizedTest(name = "case {0}")
    @CsvSource({
        "15, 4, 0, 0.5, -6",
        "16, 4, 45, 0.5, -6",
        "17, 6, 60, 0.5, -6",
        "18, 8, 67.5, 0.5, -6",
        "19, 4, 45, 1.41, 3"
    })
    void sinesBetweenTheSamples(int ebuCase, int framesInPeriod, double degrees, double amplitude, double dbtp) {
        float[] mono = new float[48_000];
        for (int i = 0; i < mono.length; i++) {
            double phase = 2 * Math.PI * i / framesInPeriod + Math.toRadians(degrees);
            mono[i] = (float) (amplitude * Math.sin(phase) * fade(i, mono.length));
        }
        double measured = dbtp(mono);
        assertTrue(measured <= dbtp + 0.2 && measured >= dbtp - 0.4, ebuCase + ": " + measured);
    }

    /** A sine that is switched on swings further than it should, so these come and go gently. */
    private static double fade(int i, int length) {
        return Math.min(1, Math.min(i, length - i) / 4_800.0);
    }

    @ParameterizedTest
    @CsvSource({"0", "100", "999"})
    void aLoneSampleIsItsOwnPeak(int at) {
        float[] mono = new float[1_000];
        mono[at] = 0.5f;
        assertEquals(-6.02, dbtp(mono), 0.01);
    }

    private static double dbtp(float[] mono) {
        TruePeak peak = new TruePeak(1);
        peak.add(mono, mono.length);
        peak.finish();
        return peak.dbtp();
    }
}
