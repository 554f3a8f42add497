package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClickSoundTest {
    @ParameterizedTest
    @CsvSource({"ACCENTED,44100,0.5", "PLAIN,44100,0.35", "ACCENTED,8000,0.5", "PLAIN,192000,0.35"})
    void theAttackIsOnTheFirstSample(ClickSound sound, int hz, float peak) {
        float[] samples = sound.samples(new SampleRate(hz));
        int highest = 0;
        for (int i = 0; i < samples.length; i++) {
            if (Math.abs(samples[i]) > Math.abs(samples[highest])) {
                highest = i;
            }
        }
        assertEquals(peak, Math.abs(samples[highest]), 1e-6);
        assertTrue(samples[0] > 0, "silent at first");
        assertTrue(highest < 0.001 * hz, "the peak comes late: sample " + highest);
        assertEquals(0, samples[samples.length - 1], 1e-3);
    }
}
