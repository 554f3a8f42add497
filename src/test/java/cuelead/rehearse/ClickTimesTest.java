package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClickTimesTest {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final Path FILE = Path.of("clicks.wav");

    private final Random random = new Random(3);

    private float[] hiss() {
        float[] sound = new float[6 * RATE.hz()];
        for (int i = 0; i < sound.length; i++) {
            sound[i] = (float) (0.001 * random.nextGaussian());
        }
        return sound;
    }

    private float[] clicks(double delaySeconds) {
        float[] sound = hiss();
        for (int click = 0; click < 8; click++) {
            put(sound, 1 + 0.5 * click + delaySeconds, 0.3);
            put(sound, 1 + 0.5 * click + delaySeconds + 0.013, 0.1); // off the wall
        }
        return sound;
    }

    private static void put(float[] sound, double seconds, double height) {
        int first = (int) Math.round(seconds * RATE.hz());
        for (int i = 0; i < 150 && first + i < sound.length; i++) {
            sound[first + i] += (float) (height * Math.exp(-i / 30.0) * Math.cos(0.4 * i));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.0123, 0.0805, 0.2217, 0.51, 0.83})
    void theRoundTripIsExact(double seconds) throws Refused {
        assertEquals(seconds, ClickTimes.roundTripSeconds(new MonoSound(clicks(seconds), RATE), FILE), 0.0003);
    }

    @Test
    void aKnockOnOneClickIsForgiven() throws Refused {
        float[] sound = clicks(0.1);
        for (int i = 0; i < 3_000; i++) {
            sound[(int) (2.09 * RATE.hz()) + i] += (float) (0.8 * random.nextGaussian());
        }
        assertEquals(0.1, ClickTimes.roundTripSeconds(new MonoSound(sound, RATE), FILE), 0.0005);
    }

    @Test
    void hissIsRefusedInOneSentence() {
        Refused refusal =
                assertThrows(Refused.class, () -> ClickTimes.roundTripSeconds(new MonoSound(hiss(), RATE), FILE));
        assertTrue(refusal.getMessage().startsWith("The round trip cannot be told from clicks.wav"));
    }

    @Test
    void silenceAndAMomentAreRefused() {
        assertThrows(Refused.class, () -> ClickTimes.roundTripSeconds(new MonoSound(new float[300_000], RATE), FILE));
        assertThrows(Refused.class, () -> ClickTimes.roundTripSeconds(new MonoSound(new float[10], RATE), FILE));
        assertThrows(Refused.class, () -> ClickTimes.roundTripSeconds(new MonoSound(new float[0], RATE), FILE));
    }
}
