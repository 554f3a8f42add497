package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /**
     * After cases 20 to 23: a tone of a quarter of the rate, in which one period is twice as high, made at four times the
     * rate, band-limited, and taken over at each fourth sample, from the first, second, third or fourth. Its highest point
     * lies between the samples of some of them, and is 0 dBTP in all.
     */
    @ParameterizedTest(name = "case 2{0}")
    @ValueSource(ints = {0, 1, 2, 3})
    void aShortPeakIsFoundWhereverItLiesBetweenTheSamples(int offset) {
        int length = 4 * 4_800;
        double[] fine = new double[length];
        for (int i = 0; i < length; i++) {
            boolean isHigh = i >= length / 2 && i < length / 2 + 16;
            fine[i] = (isHigh ? 1 : 0.5) * Math.sin(2 * Math.PI * i / 16.0) * fade(i / 4, length / 4);
        }
        double[] limited = bandLimited(fine);
        double highest = 0;
        for (double value : limited) {
            highest = Math.max(highest, Math.abs(value));
        }
        float[] mono = new float[length / 4];
        for (int i = 0; i < mono.length; i++) {
            mono[i] = (float) (limited[4 * i + offset] / highest);
        }
        double measured = dbtp(mono);
        assertTrue(measured <= 0.2 && measured >= -0.4, measured + "");
    }

    /** Only what lies below half of the later rate: a sinc with a Hann window. */
    private static double[] bandLimited(double[] fine) {
        int reach = 256;
        double[] limited = new double[fine.length];
        for (int i = 0; i < fine.length; i++) {
            for (int k = Math.max(-reach, -i); k <= Math.min(reach, fine.length - 1 - i); k++) {
                double sinc = k == 0 ? 0.25 : Math.sin(Math.PI * k / 4) / (Math.PI * k);
                limited[i] += fine[i + k] * sinc * (0.5 + 0.5 * Math.cos(Math.PI * k / reach));
            }
        }
        return limited;
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
