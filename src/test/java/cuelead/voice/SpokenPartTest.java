package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpokenPartTest {
    @Test
    void cutsTheWordOutOfARoomWithATapAndABreath() {
        MonoSound word = Sounds.sound(
                Sounds.silence(0.05),
                Sounds.noise(0.02, 0.2),
                Sounds.silence(0.4),
                Sounds.vowel(0.3),
                Sounds.silence(0.4),
                Sounds.noise(0.2, 0.004),
                Sounds.silence(0.2));
        assertSpan(0.47, 0.77, Sounds.over(word, Sounds.noise(2, 0.0008)));
    }

    @Test
    void aStopInTheMiddleDoesNotPartAWord() {
        assertSpan(
                0.3,
                0.75,
                Sounds.sound(
                        Sounds.silence(0.3),
                        Sounds.vowel(0.2),
                        Sounds.silence(0.15),
                        Sounds.noise(0.1, 0.05),
                        Sounds.silence(0.3)));
    }

    @Test
    void aTightlyCutWordIsKeptWhole() {
        assertSpan(0, 0.3, Sounds.sound(Sounds.noise(0.1, 0.02), Sounds.vowel(0.2)));
    }

    @Test
    void aWordPartedByAPauseIsKeptToItsEnd() {
        assertSpan(
                0.1,
                0.9,
                Sounds.sound(
                        Sounds.silence(0.1),
                        Sounds.vowel(0.2),
                        Sounds.silence(0.4),
                        Sounds.vowel(0.2),
                        Sounds.silence(0.1)));
    }

    @Test
    void silenceHoldsNoWord() {
        assertEquals(Optional.empty(), SpokenPart.of(Sounds.sound()));
        assertEquals(Optional.empty(), SpokenPart.of(Sounds.sound(Sounds.silence(1))));
        assertEquals(Optional.empty(), SpokenPart.of(Sounds.sound(Sounds.noise(1, 0.001))));
    }

    private static void assertSpan(double start, double end, MonoSound sound) {
        AudibleSpan span = SpokenPart.of(sound).orElseThrow();
        assertEquals(start, Sounds.RATE.secondsAt(span.startFrame()), 0.005);
        assertEquals(end, Sounds.RATE.secondsAt(span.endFrame()), 0.005);
    }
}
