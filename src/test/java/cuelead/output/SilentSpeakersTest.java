package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

class SilentSpeakersTest {
    private static final SampleRate RATE = new SampleRate(8000);
    private static final int FRAMES_A_MILLI = 8;
    private static final long MILLI = 1_000_000;
    private static final int LENGTH_MILLIS = 500;

    private long nowNanos;
    private int readFrames;
    private final SilentSpeakers speakers = new SilentSpeakers(RATE, () -> nowNanos);

    private final Sound sound = (interleaved, frames) -> {
        int got = Math.min(frames, LENGTH_MILLIS * FRAMES_A_MILLI - readFrames);
        readFrames += got;
        return got;
    };

    private void pass(int millis) {
        for (int i = 0; i < millis; i++) {
            nowNanos += MILLI;
            speakers.pull();
        }
    }

    @Test
    void aSoundGoesByAsFastAsItWouldBeHeard() {
        speakers.play(sound, 7000);
        pass(123);
        assertEquals(7000 + 123 * FRAMES_A_MILLI, speakers.heardFrame());
        assertEquals(nowNanos, speakers.heardAt().nanos());
        assertFalse(speakers.hasEnded());
    }

    @Test
    void littleIsPulledAhead() {
        speakers.play(sound, 0);
        pass(100);
        assertTrue(readFrames >= 100 * FRAMES_A_MILLI && readFrames <= 140 * FRAMES_A_MILLI, readFrames + " frames");
    }

    @Test
    void nothingGoesByWhileItPauses() {
        speakers.play(sound, 0);
        pass(100);
        speakers.pause();
        pass(300);
        assertEquals(100 * FRAMES_A_MILLI, speakers.heardFrame());
        speakers.resume();
        pass(50);
        assertEquals(150 * FRAMES_A_MILLI, speakers.heardFrame());
    }

    @Test
    void itEndsWithItsLastFrame() {
        speakers.play(sound, 0);
        pass(LENGTH_MILLIS - 1);
        assertFalse(speakers.hasEnded());
        pass(30);
        assertTrue(speakers.hasEnded());
        assertEquals(LENGTH_MILLIS * FRAMES_A_MILLI, speakers.heardFrame());
    }

    @Test
    void whatIsStoppedHasEnded() {
        speakers.play(sound, 0);
        pass(10);
        speakers.stop();
        assertTrue(speakers.hasEnded());
        readFrames = 0;
        speakers.play(sound, 0);
        pass(20);
        assertEquals(20 * FRAMES_A_MILLI, speakers.heardFrame());
    }

    @Test
    void aThreadThatComesLateLetsTheSoundWait() {
        speakers.play(sound, 0);
        nowNanos += 200 * MILLI;
        assertEquals(0, speakers.heardFrame());
        speakers.pull();
        assertEquals(200 * FRAMES_A_MILLI, speakers.heardFrame());
    }
}
