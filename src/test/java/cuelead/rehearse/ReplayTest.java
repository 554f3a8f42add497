package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.MonoSound;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReplayTest {
    private static final SampleRate RATE = new SampleRate(16_000);
    private static final double ROUND_TRIP = 0.1;

    /** A word whose centre is a pulse 0.2 s behind its beginning. */
    private static Clip pulse(String words) {
        float[] samples = new float[8_000];
        samples[3_200] = 1;
        return new Clip(words, RATE, samples, 0.1, 0.2, 0.4, List.of());
    }

    private static int loudest(float[] samples, int from, int to) {
        int loudest = from;
        for (int i = from; i < to; i++) {
            loudest = Math.abs(samples[i]) > Math.abs(samples[loudest]) ? i : loudest;
        }
        return loudest;
    }

    @Test
    void plannedAndSaidLieAtTheSamePlaceOfTheMusic() throws Refused {
        float[] take = new float[10 * RATE.hz()];
        take[(int) (5.17 * RATE.hz())] = 0.3f; // said 70 ms late, and 100 ms later in the microphone
        Voice voice = words -> Optional.of(pulse(words));
        Replay replay = new Replay(new MonoSound(take, RATE), Optional.empty(), ROUND_TRIP, voice);
        ReviewedCall call =
                ReviewedCall.called(MatchingTest.planned("step", 5), new HeardWord("step", 5.1, 5.17, 5.4), 5.07);
        MonoSound both = replay.of(call);
        assertEquals(6.5, both.lengthSeconds(), 1e-3);
        float[] samples = both.samples();
        assertEquals(1.5, loudest(samples, 0, 48_000) / 16_000.0, 0.001);
        assertEquals(3.5 + 1.57, loudest(samples, 56_000, samples.length) / 16_000.0, 0.001);
    }

    @Test
    void whatWasNotPlannedIsHeardOnce() throws Refused {
        Replay replay = new Replay(
                new MonoSound(new float[160_000], RATE),
                Optional.of(new MonoSound(new float[16_000], RATE)),
                0,
                words -> Optional.empty());
        MonoSound once = replay.of(ReviewedCall.extra(new HeardWord("okay", 0.1, 0.2, 0.3), 0.2));
        assertEquals(3, once.lengthSeconds(), 1e-3);
        assertTrue(loudest(once.samples(), 0, once.frames()) == 0, "silence stays silent");
    }
}
