package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Marcus' formula on sounds whose times are made, in the kinds of trouble that a room makes. */
class WordInTakeTest {
    private static final double HISS = 0.1;
    private static final double VOWEL = 0.25;
    private static final double MARCUS = 0.65 * HISS + 0.25 * VOWEL;

    /** Silence, "sah", silence. */
    private static MonoSound sah(double before) {
        return Sounds.sound(Sounds.silence(before), Sounds.noise(HISS, 0.02), Sounds.vowel(VOWEL), Sounds.silence(0.7));
    }

    @Property(tries = 20, seed = "20261126")
    void theRoomsNoiseMovesTheCentreLittle(@ForAll @DoubleRange(min = -80, max = -48) double noiseDb) {
        assertEquals(
                0.6 + MARCUS, heard(Sounds.over(sah(0.6), Sounds.noise(2, Math.pow(10, noiseDb / 20))), "sah"), 0.012);
    }

    @Property(tries = 20, seed = "20261126")
    void aBreathBeforeTheWordIsNotOfIt(@ForAll @DoubleRange(min = 0.05, max = 0.3) double pause) {
        MonoSound breathed = Sounds.sound(
                Sounds.silence(0.4),
                Sounds.noise(0.3, 0.01),
                Sounds.silence(pause),
                Sounds.noise(HISS, 0.02),
                Sounds.vowel(VOWEL),
                Sounds.silence(0.7));
        assertEquals(0.7 + pause + MARCUS, heard(breathed, "sah"), 0.012);
    }

    @Test
    void aLouderSmackOfTheLipsIsNoWord() {
        MonoSound smacked = Sounds.sound(
                Sounds.silence(0.3),
                Sounds.noise(0.008, 0.5),
                Sounds.silence(0.3),
                Sounds.noise(HISS, 0.02),
                Sounds.vowel(VOWEL),
                Sounds.silence(0.7));
        assertEquals(0.608 + MARCUS, heard(smacked, "sah"), 0.012);
    }

    @Test
    void theHissBeforeAClosureBelongsToTheWordWhereItIsSpelled() {
        MonoSound stah = Sounds.sound(
                Sounds.silence(0.4),
                Sounds.noise(0.12, 0.02),
                Sounds.silence(0.07),
                Sounds.vowel(VOWEL),
                Sounds.silence(0.7));
        assertEquals(0.4 + 0.65 * 0.19 + 0.25 * VOWEL, heard(stah, "stah"), 0.012);
        assertEquals(0.59 + 0.25 * VOWEL, heard(stah, "ah"), 0.012);
    }

    @Test
    void aBurstBehindAClosureEndsTheWordWhereItIsSpelled() {
        MonoSound aht = Sounds.sound(
                Sounds.silence(0.4),
                Sounds.vowel(0.2),
                Sounds.silence(0.1),
                Sounds.noise(0.03, 0.03),
                Sounds.silence(0.7));
        assertEquals(0.73, end(aht, "aht"), 0.012);
        assertEquals(0.6, end(aht, "ah"), 0.012);
    }

    /** A shout and a whisper have the same times. */
    @Property(tries = 10, seed = "20261126")
    void loudnessChangesNothing(@ForAll @DoubleRange(min = 0.01, max = 1) double gain) {
        float[] samples = sah(0.5).samples().clone();
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= (float) gain;
        }
        assertEquals(heard(sah(0.5), "sah"), heard(new MonoSound(samples, Sounds.RATE), "sah"), 0.002);
    }

    @Test
    void silenceIsNoWordAndNoiseAloneStaysInsideTheTake() {
        assertEquals(Optional.empty(), WordInTake.of(Sounds.sound(Sounds.silence(1)), "rock"));
        assertEquals(Optional.empty(), WordInTake.of(Sounds.sound(), "rock"));
        MonoSound noise = Sounds.sound(Sounds.noise(1, 0.1));
        AudibleSpan span = WordInTake.of(noise, "rock").orElseThrow().span();
        assertTrue(span.startFrame() >= 0 && span.endFrame() <= noise.frames(), span.toString());
    }

    private static double heard(MonoSound take, String text) {
        return WordInTake.of(take, text).orElseThrow().centreSeconds(take);
    }

    private static double end(MonoSound take, String text) {
        return take.rate()
                .secondsAt(WordInTake.of(take, text).orElseThrow().span().endFrame());
    }
}
