package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.KWeighting;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SynthVoiceTest {
    /** The call words of the demo dances that are one word. */
    private static final List<String> WORDS = List.of(
            "and", "back", "balance", "ball", "behind", "close", "cross", "eight", "five", "forward", "four", "haul",
            "hold", "kick", "left", "one", "point", "recover", "restart", "right", "rock", "sailor", "seven", "shuffle",
            "side", "six", "step", "sway", "sweep", "tag", "three", "touch", "twinkle", "two", "walk");

    /**
     * Centre and end in seconds from the onset, computed outside of this project from the written clip and its phones:
     * Marcus 1981 as an independent Python program has it, onset and end by RMS thresholds on the 16-bit file.
     */
    @ParameterizedTest
    @CsvSource({
        "step, 0.1672, 0.4432",
        "touch, 0.1001, 0.3348",
        "heel, 0.1177, 0.3717",
        "rock, 0.0853, 0.2770",
        "recover, 0.1391, 0.3454",
        "behind, 0.1968, 0.4287",
        "behind side cross, 0.1690, 1.0239",
        "side, 0.1322, 0.3691",
        "shuffle, 0.0804, 0.3958",
        "sailor, 0.1049, 0.4253",
        "kick ball change, 0.0483, 0.9224",
        "together, 0.1369, 0.3638",
        "forward, 0.0795, 0.4651",
        "half left, 0.0913, 0.6837",
        "quarter right to the back, 0.0511, 0.9432",
        "wall two the front, 0.0557, 0.7361",
        "restart, 0.0764, 0.6054",
        "hold, 0.1225, 0.3916",
        "five, 0.1181, 0.3406",
        "eight, 0.0936, 0.3699",
        "and, 0.0336, 0.1280",
        "again, 0.1472, 0.2934",
        "stomp, 0.1780, 0.4865",
        "unwind, 0.1831, 0.4278"
    })
    void theCentreIsMarcusOfTheStressedSyllable(String words, double centre, double end) throws Refused {
        Clip clip = say(words);
        assertEquals(centre, clip.centreSeconds() - clip.onsetSeconds(), 0.002);
        assertEquals(end, clip.endSeconds() - clip.onsetSeconds(), 0.004);
    }

    @Test
    void wordsAreShort() throws Refused {
        double sum = 0;
        for (String word : WORDS) {
            double seconds = say(word).endSeconds() - say(word).onsetSeconds();
            assertTrue(seconds > 0.1 && seconds < 0.62, word + " takes " + seconds + " s");
            sum += seconds;
        }
        assertEquals(0.36, sum / WORDS.size(), 0.03);
    }

    @Test
    void aPhraseHasNoPause() throws Refused {
        for (String words : List.of("rock recover", "wall two", "behind side cross", "restart after sixteen")) {
            Clip clip = say(words);
            List<String> names = clip.phones().stream().map(Clip.Phone::name).toList();
            assertFalse(names.subList(1, names.size() - 1).contains("pau"), words + ": " + names);
        }
    }

    @Test
    void everyWordIsEquallyLoud() throws Refused {
        for (String word : WORDS) {
            Clip clip = say(word);
            float[] heard = Arrays.copyOfRange(
                    clip.samples(), Sounds.RATE.framesIn(clip.onsetSeconds()), Sounds.RATE.framesIn(clip.endSeconds()));
            assertEquals(-23, KWeighting.loudnessLufs(heard, Sounds.RATE), 1, word);
        }
    }

    @Test
    void aClipBeginsAndEndsInSilenceJustBesideItsWord() throws Refused {
        for (String word : WORDS) {
            Clip clip = say(word);
            float[] samples = clip.samples();
            assertEquals(0, samples[0], 0.001, word);
            assertEquals(0, samples[samples.length - 1], 0.001, word);
            assertTrue(clip.onsetSeconds() < 0.02, word);
            assertTrue(Sounds.RATE.secondsAt(samples.length) - clip.endSeconds() < 0.07, word);
        }
    }

    @Test
    void equalWordsGiveEqualClips() throws Refused {
        Clip first = new SynthVoice(Sounds.RATE, Pronunciations.NONE)
                .say("rock recover")
                .orElseThrow();
        say("something else");
        Clip second = say("rock recover");
        assertArrayEquals(first.samples(), second.samples());
        assertEquals(first.centreSeconds(), second.centreSeconds());
        assertEquals(first.phones(), second.phones());
    }

    @Test
    void twoThreadsDoNotMixTheirWords() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<Clip>> together =
                    WORDS.stream().map(word -> threads.submit(() -> say(word))).toList();
            for (int i = 0; i < WORDS.size(); i++) {
                assertArrayEquals(
                        say(WORDS.get(i)).samples(), together.get(i).get().samples(), WORDS.get(i));
            }
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void anyRateGivesTheSameTimes() throws Refused {
        Clip usual = say("step");
        for (int hz : new int[] {16_000, 22_050, 48_000}) {
            Clip clip = new SynthVoice(new SampleRate(hz), Pronunciations.NONE)
                    .say("step")
                    .orElseThrow();
            assertEquals(usual.centreSeconds(), clip.centreSeconds(), 0.002);
            assertEquals(usual.endSeconds(), clip.endSeconds(), 0.004);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "!!!", "\u3042\u3044"})
    void whatCannotBeSpokenIsNotSilence(String words) throws Refused {
        assertEquals(Optional.empty(), Sounds.SYNTH.say(words));
    }

    @Test
    void saysTheVowelOfTouchShort() throws Refused {
        for (String word : List.of("touch", "shuffle", "scuff", "brush", "bump", "lunge", "one", "recover")) {
            Set<String> phones = phones(word);
            assertTrue(phones.contains("ax"), word + ": " + phones);
            assertFalse(phones.contains("ah") || phones.contains("aa"), word + ": " + phones);
        }
    }

    @Test
    void closeIsWhatFeetDo() throws Refused {
        assertEquals(Set.of("pau", "k", "l", "ow", "z"), withPause(phones("close")));
    }

    private static Set<String> withPause(Set<String> phones) {
        Set<String> all = new HashSet<>(phones);
        all.add("pau");
        return all;
    }

    private static Set<String> phones(String word) throws Refused {
        return say(word).phones().stream().map(Clip.Phone::name).collect(Collectors.toSet());
    }

    private static Clip say(String words) throws Refused {
        return Sounds.SYNTH.say(words).orElseThrow();
    }
}
