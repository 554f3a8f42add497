package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import cuelead.voice.VoiceCache;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpeakingTest {
    private static final SampleRate RATE = new SampleRate(22_050);

    @TempDir
    private Path folder;

    /** Says its first word only when all is over. */
    @Test
    void whoQuitsWaitsForNoWordAndNothingIsWrittenAfterwards() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch over = new CountDownLatch(1);
        List<Thread> speakers = new CopyOnWriteArrayList<>();
        Voice hum = words -> {
            speakers.add(Thread.currentThread());
            begun.countDown();
            awaited(over);
            return Optional.of(new Clip(words, RATE, new float[4_000], 0, 0.05, 0.18, List.of()));
        };
        VoiceCache cache = new VoiceCache(hum, "hum", folder);
        Speaking speaking = new Speaking(cache, cache::writeNoMore);
        speaking.begin(List.of("rock", "recover", "vine"));
        begun.await();
        speaking.close();
        over.countDown();
        speakers.get(0).join();
        assertFalse(speaking.isBusy());
        assertEquals(Set.of("rock"), speaking.spoken().keySet());
        assertTrue(Files.notExists(folder.resolve("hum")));
        assertTrue(cache.isAtHand("rock"));
    }

    @Test
    void aVoiceThatBreaksIsToldAndNotForgotten() throws Exception {
        Speaking speaking = new Speaking(
                words -> {
                    throw new IllegalArgumentException("broken");
                },
                () -> {});
        speaking.begin(List.of("rock"));
        while (speaking.isBusy()) {
            Thread.onSpinWait();
        }
        Exception told = assertThrows(IllegalStateException.class, speaking::check);
        assertEquals("broken", told.getCause().getMessage());
    }

    private static void awaited(CountDownLatch latch) throws Refused {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new Refused("interrupted");
        }
    }
}
