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
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpeakingTest {
    private static final SampleRate RATE = new SampleRate(22_050);

    @TempDir
    private Path folder;

    /** Says its first word only when somebody waits for the end. */
    @Test
    void whoQuitsWaitsForOneWordAndFindsItKeptWhole() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch quitting = new CountDownLatch(1);
        Voice hum = words -> {
            begun.countDown();
            awaited(quitting);
            return Optional.of(new Clip(words, RATE, new float[4_000], 0, 0.05, 0.18, List.of()));
        };
        Speaking speaking = new Speaking(new VoiceCache(hum, "hum", folder));
        speaking.begin(List.of("rock", "recover", "vine"));
        begun.await();
        Thread quits = new Thread(speaking::close);
        quits.start();
        while (quits.getState() != Thread.State.TIMED_WAITING) {
            Thread.onSpinWait();
        }
        quitting.countDown();
        quits.join();
        assertFalse(speaking.isBusy());
        assertEquals(Set.of("rock"), speaking.spoken().keySet());
        try (Stream<Path> files = Files.list(folder.resolve("hum"))) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).toList();
            assertEquals(1, names.size());
            assertTrue(names.get(0).endsWith(".clip"), names.toString());
        }
        Clip kept = new VoiceCache(words -> Optional.empty(), "hum", folder)
                .say("rock")
                .orElseThrow();
        assertEquals(4_000, kept.samples().length);
    }

    @Test
    void aVoiceThatBreaksIsToldAndNotForgotten() throws Exception {
        Speaking speaking = new Speaking(words -> {
            throw new IllegalArgumentException("broken");
        });
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
