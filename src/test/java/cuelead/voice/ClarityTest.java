package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

class ClarityTest {
    private static final SampleRate RATE = new SampleRate(48_000);

    /** A steady tone is compressed evenly, so that two of them tell what the filters do: 5 dB against none. */
    @Test
    void thePresenceRisesAgainstTheMiddle() {
        MonoSound both = tones(200, 2_800, 0.01);
        MonoSound clear = Clarity.USUAL.of(both);
        double before = 20 * Math.log10(height(both, 2_800) / height(both, 200));
        double after = 20 * Math.log10(height(clear, 2_800) / height(clear, 200));
        assertEquals(5, after - before, 1.2, "and 1 dB of 200 Hz is lost to the high-pass");
    }

    @Test
    void theDepthsGo() {
        MonoSound both = tones(50, 500, 0.1);
        MonoSound clear = Clarity.USUAL.of(both);
        double before = height(both, 50) / height(both, 500);
        double after = height(clear, 50) / height(clear, 500);
        // a Butterworth of the second order both ways: 2 * 10 log10(1 + (120/50)^4) = 30.7 dB
        assertEquals(-30.7, 20 * Math.log10(after / before), 1);
    }

    /** A soft second behind a loud one: 20 dB apart before, a third of it afterwards. */
    @Test
    void softAndLoudComeTogether() {
        float[] samples = new float[96_000];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) ((i < 48_000 ? 0.5 : 0.05) * Math.sin(2 * Math.PI * 1_000 * i / 48_000));
        }
        float[] clear = Clarity.USUAL.of(new MonoSound(samples, RATE)).samples();
        assertEquals(20.0 / 3, 20 * Math.log10(highest(clear, 24_000) / highest(clear, 72_000)), 0.7);
    }

    @Test
    void aClickStaysWhereItIs() {
        float[] samples = new float[9_600];
        samples[4_800] = 0.5f;
        float[] clear = Clarity.USUAL.of(new MonoSound(samples, RATE)).samples();
        int highest = 0;
        for (int i = 0; i < clear.length; i++) {
            highest = Math.abs(clear[i]) > Math.abs(clear[highest]) ? i : highest;
        }
        assertTrue(Math.abs(highest - 4_800) <= 2, "at " + highest);
        assertEquals(samples.length, clear.length);
    }

    private static MonoSound tones(double lowHz, double highHz, double level) {
        float[] samples = new float[48_000];
        for (int i = 0; i < samples.length; i++) {
            double at = 2 * Math.PI * i / 48_000;
            samples[i] = (float) (level * (Math.sin(lowHz * at) + Math.sin(highHz * at)));
        }
        return new MonoSound(samples, RATE);
    }

    /** Amplitude of one frequency over the middle half second. */
    private static double height(MonoSound sound, double hz) {
        double sine = 0;
        double cosine = 0;
        for (int i = 12_000; i < 36_000; i++) {
            sine += sound.samples()[i] * Math.sin(2 * Math.PI * hz * i / 48_000);
            cosine += sound.samples()[i] * Math.cos(2 * Math.PI * hz * i / 48_000);
        }
        return Math.hypot(sine, cosine) / 12_000;
    }

    /** The highest sample of some 10 ms. */
    private static double highest(float[] samples, int from) {
        double highest = 0;
        for (int i = from; i < from + 480; i++) {
            highest = Math.max(highest, Math.abs(samples[i]));
        }
        return highest;
    }
}
