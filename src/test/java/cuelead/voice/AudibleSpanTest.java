package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AudibleSpanTest {
    private static final double MILLISECOND = 0.001;

    @Property(tries = 30, seed = "20261125")
    void findsTheEdgesOfANoiseBurstWithinAMillisecond(
            @ForAll @DoubleRange(min = 0, max = 0.3) double before,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double length) {
        MonoSound sound = Sounds.sound(Sounds.silence(before), Sounds.noise(length, 0.1), Sounds.silence(0.1));
        AudibleSpan span = AudibleSpan.of(sound).orElseThrow();
        assertEquals(before, Sounds.RATE.secondsAt(span.startFrame()), MILLISECOND);
        assertEquals(before + length, Sounds.RATE.secondsAt(span.endFrame()), MILLISECOND);
    }

    @Test
    void fortyDecibelsBelowTheLoudestIsTheLimit() {
        float[] word = Sounds.noise(0.2, 0.1);
        MonoSound under = Sounds.sound(Sounds.noise(0.1, 0.0006), word);
        MonoSound over = Sounds.sound(Sounds.noise(0.1, 0.0020), word);
        assertEquals(0.1, start(under, 0), MILLISECOND);
        assertEquals(0, start(over, 0), MILLISECOND);
    }

    @Test
    void roomNoiseRaisesTheLimit() {
        MonoSound sound = Sounds.sound(Sounds.noise(0.1, 0.004), Sounds.noise(0.2, 0.1));
        assertEquals(0.1, start(sound, 0.004), MILLISECOND);
    }

    @Test
    void silenceIsNowhereAudible() {
        assertEquals(Optional.empty(), AudibleSpan.of(Sounds.sound(Sounds.silence(0.2))));
        assertTrue(AudibleSpan.of(Sounds.sound()).isEmpty());
    }

    private static double start(MonoSound sound, double noiseRms) {
        return Sounds.RATE.secondsAt(
                AudibleSpan.of(sound, noiseRms).orElseThrow().startFrame());
    }
}
