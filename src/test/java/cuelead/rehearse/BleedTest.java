package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BleedTest {
    private static final SampleRate RATE = new SampleRate(16_000);
    private static final int FRAMES = 12 * 16_000;
    private static final double ROUND_TRIP_SECONDS = 0.09;

    private final Random random = new Random(5);
    private final float[] music = new float[FRAMES];
    private final float[] caught = new float[FRAMES];
    private final float[] voice = new float[FRAMES];

    BleedTest() {
        double low = 0;
        for (int i = 0; i < FRAMES; i++) {
            low = 0.7 * low + 0.1 * random.nextGaussian();
            music[i] = (float) (low + 0.2 * Math.sin(0.05 * i + 3 * Math.sin(i / 9_000.0)));
        }
        for (int echo = 0; echo < 60; echo++) {
            double gain = 0.1 * Math.exp(-echo / 15.0) * (echo % 3 - 0.7);
            int later = (int) (ROUND_TRIP_SECONDS * 16_000) + 37 * echo;
            for (int i = later; i < FRAMES; i++) {
                caught[i] += (float) (gain * music[i - later]);
            }
        }
        for (int i = 0; i < FRAMES; i++) {
            voice[i] = i % 16_000 < 4_000 ? (float) (0.3 * Math.sin(0.2 * i)) : 0;
        }
    }

    private static double rms(float[] sound, int from, int to) {
        double power = 0;
        for (int i = from; i < to; i++) {
            power += sound[i] * sound[i];
        }
        return Math.sqrt(power / (to - from));
    }

    private float[] left(float[] with) {
        float[] take = caught.clone();
        for (int i = 0; i < FRAMES; i++) {
            take[i] += with[i];
        }
        return Bleed.removed(new MonoSound(take, RATE), new MonoSound(music, RATE), ROUND_TRIP_SECONDS)
                .samples();
    }

    @Test
    void musicThatIsKnownGoesAndTheVoiceStays() {
        float[] left = left(voice);
        assertEquals(FRAMES, left.length);
        double before = rms(caught, 5 * 16_000 + 6_000, 5 * 16_000 + 15_000);
        double after = rms(left, 5 * 16_000 + 6_000, 5 * 16_000 + 15_000);
        assertTrue(after < 0.15 * before, "left: " + after / before);
        assertEquals(rms(voice, 80_500, 83_500), rms(left, 80_500, 83_500), 0.01);
    }

    @Test
    void whereTheMusicIsNotInTheTakeNothingChanges() {
        float[] take = voice.clone();
        float[] left = Bleed.removed(new MonoSound(take, RATE), new MonoSound(music, RATE), ROUND_TRIP_SECONDS)
                .samples();
        double off = 0;
        for (int i = 4_096; i < FRAMES - 4_096; i++) {
            off = Math.max(off, Math.abs(left[i] - voice[i]));
        }
        assertTrue(off < 0.03, "changed by " + off);
    }

    @Test
    void musicThatEndsEarlierIsSilentFromThere() {
        float[] shorter = java.util.Arrays.copyOf(music, 16_000);
        float[] left = Bleed.removed(new MonoSound(voice, RATE), new MonoSound(shorter, RATE), 0)
                .samples();
        assertEquals(rms(voice, 80_500, 83_500), rms(left, 80_500, 83_500), 0.005);
    }
}
