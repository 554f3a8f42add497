package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OnlyMusicTest {
    private static final SampleRate RATE = new SampleRate(16_000);
    private static final int FRAMES = 20 * 16_000;

    private final Random random = new Random(3);
    private final float[] music = noise(0.1);
    private final float[] voice = noise(0.1);

    private float[] noise(double loud) {
        float[] noise = new float[FRAMES];
        double low = 0;
        for (int i = 0; i < FRAMES; i++) {
            low = 0.8 * low + loud * random.nextGaussian();
            noise[i] = (float) low;
        }
        return noise;
    }

    /** The music, so much later, with a voice before a frame. */
    private OptionalDouble from(int laterFrames, double gain, int voiceBefore) {
        float[] take = new float[FRAMES];
        for (int i = 0; i < FRAMES; i++) {
            int at = i - laterFrames;
            take[i] = (float) (gain * (at >= 0 && at < FRAMES ? music[at] : 0)) + (i < voiceBefore ? voice[i] : 0);
        }
        return OnlyMusic.fromSeconds(new MonoSound(take, RATE), new MonoSound(music, RATE));
    }

    @Test
    void theComputersOwnSoundIsKnownHoweverLateOrSoft() {
        assertEquals(OptionalDouble.of(0), from(0, 1, 0));
        assertEquals(OptionalDouble.of(0), from(-1_400, 0.3, 0));
        assertEquals(OptionalDouble.of(0), from(6_000, 2, 0));
    }

    @Test
    void itIsKnownFromWhereTheMicrophoneWasUnplugged() {
        assertEquals(OptionalDouble.of(12), from(700, 0.5, 11 * 16_000));
    }

    @Test
    void aVoiceOverMusicAndSilenceAreNone() {
        assertEquals(OptionalDouble.empty(), from(700, 0.7, FRAMES));
        assertEquals(OptionalDouble.empty(), from(700, 0, FRAMES));
        assertEquals(OptionalDouble.empty(), from(700, 0, 0));
    }
}
