package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.voice.TakeVerdict.Fault;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TakeVerdictTest {
    private static MonoSound take(double gain, double noiseRms) {
        float[] samples = Sounds.over(
                        Sounds.sound(Sounds.silence(0.5), Sounds.vowel(0.3), Sounds.silence(1)),
                        Sounds.noise(1.8, noiseRms / gain))
                .samples();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) Math.max(-1, Math.min(1, samples[i] * gain));
        }
        return new MonoSound(samples, Sounds.RATE);
    }

    private static Fault fault(MonoSound take) {
        return TakeVerdict.of(take, "ah").fault();
    }

    @Test
    void aPlainWordIsGoodAndMarked() {
        TakeVerdict verdict = TakeVerdict.of(take(1, 0.001), "ah");
        assertEquals(Fault.NONE, verdict.fault());
        assertEquals(0.5 + 0.25 * 0.3, verdict.mark().orElseThrow().centreSeconds(), 0.015);
        assertEquals(1.8, verdict.mark().orElseThrow().lengthSeconds(), 1e-4);
    }

    @Test
    void whatIsWrongIsTold() {
        assertEquals(Fault.DEAD, fault(Sounds.sound(Sounds.silence(1))));
        assertEquals(Fault.SILENT, fault(Sounds.sound(Sounds.noise(1, 0.001))));
        assertEquals(Fault.CLIPPED, fault(take(8, 0.001)));
        assertEquals(Fault.TOO_QUIET, fault(take(0.04, 0.0001)));
        assertEquals(Fault.NOISY, fault(take(0.5, 0.04)));
        assertEquals(Fault.CUT_OFF, fault(Sounds.sound(Sounds.vowel(0.3), Sounds.silence(1))));
        assertEquals(Fault.CUT_OFF, fault(Sounds.sound(Sounds.silence(1), Sounds.vowel(0.3))));
    }

    @Test
    void aTakeWithoutAWordHasNoMark() {
        assertEquals(
                Optional.empty(),
                TakeVerdict.of(Sounds.sound(Sounds.noise(1, 0.001)), "ah").mark());
    }
}
