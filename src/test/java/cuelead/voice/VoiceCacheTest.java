package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VoiceCacheTest {
    private final AtomicInteger spoken = new AtomicInteger();
    private final Voice voice = words -> {
        spoken.incrementAndGet();
        return words.equals("!") ? Optional.empty() : Optional.of(Sounds.clip(words, 0.3));
    };

    @TempDir
    private Path folder;

    @Test
    void remembersAcrossStarts() throws Refused {
        Clip first = cache("v1").say("rock \u00bc").orElseThrow();
        Clip second = cache("v1").say("rock \u00bc").orElseThrow();
        assertEquals(1, spoken.get());
        assertEquals(first.words(), second.words());
        assertEquals(first.rate(), second.rate());
        assertArrayEquals(first.samples(), second.samples());
        assertEquals(first.onsetSeconds(), second.onsetSeconds());
        assertEquals(first.centreSeconds(), second.centreSeconds());
        assertEquals(first.endSeconds(), second.endSeconds());
        assertEquals(first.phones(), second.phones());
    }

    @Test
    void whatItHasSaidIsAtHandAlsoInALaterStart() throws Refused {
        VoiceCache cache = cache("v1");
        assertFalse(cache.isAtHand("rock"));
        cache.say("rock");
        assertTrue(cache.isAtHand("rock"));
        assertTrue(cache("v1").isAtHand("rock"));
        assertFalse(cache("v2").isAtHand("rock"));
        assertEquals(1, spoken.get());
    }

    @Test
    void whereNothingIsWrittenAnyMoreItSpeaksOn() throws Exception {
        VoiceCache cache = cache("v1");
        cache.say("rock");
        cache.writeNoMore();
        assertEquals("vine", cache.say("vine").orElseThrow().words());
        assertTrue(cache("v1").isAtHand("rock"));
        assertFalse(cache("v1").isAtHand("vine"));
        assertEquals(List.of(), cache.problems());
    }

    @Test
    void amongSeveralVoicesTheOneThatSpeaksDecides() throws Refused {
        cache("v1").say("rock");
        Voice recorded = new Voice() {
            @Override
            public Optional<Clip> say(String words) {
                return words.equals("vine") ? Optional.of(Sounds.clip(words, 0.3)) : Optional.empty();
            }

            @Override
            public boolean isAtHand(String words) {
                return true;
            }
        };
        Voices voices = new Voices(List.of(recorded, cache("v1")));
        assertTrue(voices.isAtHand("vine"));
        assertTrue(voices.isAtHand("rock"));
        assertFalse(voices.isAtHand("recover"));
        assertFalse(new Voices(List.of(cache("v1"), recorded)).isAtHand("vine"));
        assertEquals(1, spoken.get());
    }

    @Test
    void oneStartHasOneClipForAWord() throws Refused {
        VoiceCache cache = cache("v1");
        assertSame(cache.say("rock").orElseThrow(), cache.say("rock").orElseThrow());
    }

    @Test
    void anotherVoiceIsAnotherKey() throws Refused {
        cache("v1").say("rock");
        cache("v2").say("rock");
        assertEquals(2, spoken.get());
    }

    @Test
    void wordsThatLookAlikeAreKeptApart() throws Refused {
        assertEquals("Rock!", cache("v1").say("Rock!").orElseThrow().words());
        assertEquals("rock", cache("v1").say("rock").orElseThrow().words());
        assertEquals("rock-", cache("v1").say("rock-").orElseThrow().words());
        assertEquals(3, spoken.get());
    }

    @Test
    void aFileDamagedAnywhereIsMadeAgain() throws Exception {
        cache("v1").say("rock");
        Path file = onlyFile();
        byte[] whole = Files.readAllBytes(file);
        int damages = 0;
        for (int at = 0; at < whole.length; at += 1 + at / 3) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 0x41;
            Files.write(file, damaged);
            assertArrayEquals(
                    Sounds.clip("rock", 0.3).samples(),
                    cache("v1").say("rock").orElseThrow().samples());
            assertArrayEquals(whole, Files.readAllBytes(file), "byte " + at);
            damages++;
        }
        for (int length : new int[] {0, 3, 11, 40, whole.length - 1}) {
            Files.write(file, Arrays.copyOf(whole, length));
            cache("v1").say("rock");
            assertArrayEquals(whole, Files.readAllBytes(file), length + " bytes");
            damages++;
        }
        assertEquals(1 + damages, spoken.get());
    }

    @Test
    void aClipUnderAnotherWordsNameIsNotTaken() throws Exception {
        cache("v1").say("rock");
        ClipStore store = new ClipStore(folder.resolve("v1"), "v1");
        Files.copy(onlyFile(), store.file("step"));
        assertEquals("step", cache("v1").say("step").orElseThrow().words());
    }

    @Test
    void nothingHalfWrittenStays() throws Exception {
        cache("v1").say("rock");
        assertTrue(onlyFile().getFileName().toString().endsWith(".clip"));
    }

    @Test
    void whatCannotBeSpokenIsNotKept() throws Refused {
        assertEquals(Optional.empty(), cache("v1").say("!"));
        assertEquals(Optional.empty(), cache("v1").say("!"));
        assertEquals(2, spoken.get());
    }

    @Test
    void aFolderThatCannotBeMadeCostsOneNote() throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("file"), "not a folder");
        VoiceCache cache = new VoiceCache(voice, "v1", inTheWay);
        assertEquals("rock", cache.say("rock").orElseThrow().words());
        assertEquals("step", cache.say("step").orElseThrow().words());
        assertEquals(
                List.of(Problem.Severity.NOTE),
                cache.problems().stream().map(Problem::severity).toList());
    }

    private Path onlyFile() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("v1"))) {
            List<Path> all = files.toList();
            assertEquals(1, all.size());
            return all.get(0);
        }
    }

    private VoiceCache cache(String key) {
        return new VoiceCache(voice, key, folder);
    }
}
