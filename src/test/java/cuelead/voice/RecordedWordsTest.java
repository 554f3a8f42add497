package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.KWeighting;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordedWordsTest {
    private final Map<String, MonoSound> sounds = new HashMap<>();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "rock.wav, rock",
        "ROCK.Wav, Rock",
        "Kick-Ball_Change.mp3, kick ball change",
        "1.wav, one",
        "one.ogg, 1",
        "don\u2019t stop.flac, don't stop",
        "quarter turn.wav, 1/4 turn",
        "3.00.aiff, three o'clock",
        "R.m4a, right"
    })
    void aFileIsNamedAfterItsWord(String file, String words) throws Exception {
        record(file, 0.3);
        assertEquals(words, words().say(words).orElseThrow().words());
        assertEquals(List.of(), words().problems());
    }

    @Test
    void othersAreLeftToOthers() throws Exception {
        record("rock.wav", 0.3);
        assertEquals(Optional.empty(), words().say("step"));
        assertEquals(Optional.empty(), words().say("rock step"));
        assertEquals(Optional.empty(), words().say("!!!"));
    }

    @Test
    void aWordIsTrimmedFadedAndLevelled() throws Exception {
        record("rock.wav", 0.3);
        Clip rock = words().say("rock").orElseThrow();
        assertEquals(0.3, rock.endSeconds() - rock.onsetSeconds(), 0.005);
        assertEquals(0.33, Sounds.RATE.secondsAt(rock.samples().length), 0.02);
        assertEquals(0, rock.samples()[0], 0.001);
        float[] heard = Arrays.copyOfRange(
                rock.samples(), Sounds.RATE.framesIn(rock.onsetSeconds()), Sounds.RATE.framesIn(rock.endSeconds()));
        assertEquals(-23, KWeighting.loudnessLufs(heard, Sounds.RATE), 0.5);
        assertEquals(rock.onsetSeconds() + 0.25 * 0.3, rock.centreSeconds(), 0.015);
    }

    @Test
    void aMarkBesideTheRecordingsIsTheCentre() throws Exception {
        record("rock.wav", 0.3);
        double length = sounds.get("rock.wav").lengthSeconds();
        double heard = words().say("rock").orElseThrow().centreSeconds();
        double marked = WordInTake.of(Rumble.removed(sounds.get("rock.wav")), "rock")
                .orElseThrow()
                .centreSeconds(sounds.get("rock.wav"));
        Mark later = new Mark(marked + 0.03, length, Mark.By.EAR);
        Files.writeString(folder.resolve(MarkFile.NAME), MarkFile.print(Map.of("rock.wav", later)));
        assertEquals(heard + 0.03, words().say("rock").orElseThrow().centreSeconds(), 0.001);
        assertEquals(List.of(), words().problems());
    }

    @Test
    void aMarkOfAnotherRecordingIsNotUsed() throws Exception {
        record("rock.wav", 0.3);
        double heard = words().say("rock").orElseThrow().centreSeconds();
        Mark old = new Mark(0.05, 9.9, Mark.By.EAR);
        Files.writeString(folder.resolve(MarkFile.NAME), MarkFile.print(Map.of("rock.wav", old)) + "wrong\n");
        assertEquals(heard, words().say("rock").orElseThrow().centreSeconds(), 1e-9);
        assertEquals(List.of("mark", "mark_of_another"), kinds(words()));
    }

    @Test
    void allFilesOfAFolderAreMarkedAndMarksByEarStay() throws Exception {
        record("rock.wav", 0.3);
        record("step.mp3", 0.3);
        put("hum.wav", Sounds.sound(Sounds.silence(0.5)));
        Mark byEar = new Mark(0.01, sounds.get("step.mp3").lengthSeconds(), Mark.By.EAR);
        Files.writeString(folder.resolve(MarkFile.NAME), MarkFile.print(Map.of("step.mp3", byEar)));
        FolderMarks marks = FolderMarks.of(folder, this::read);
        assertEquals(List.of("rock", "step"), marks.words());
        assertEquals(Mark.By.HEARING, marks.marks().get("rock.wav").by());
        assertEquals(0.01, marks.marks().get("step.mp3").centreSeconds(), 1e-4);
        assertEquals(folder.resolve("rock.wav"), marks.files().get("rock"));
        assertEquals(
                List.of("recording_silent"),
                marks.problems().stream().map(Problem::kind).toList());
        String told = marks.problems().get(0).message();
        assertTrue(told.contains("No word is heard in this recording."), told);
    }

    @Test
    void aPhraseComesFromItsOwnFileFirst() throws Exception {
        record("rock.wav", 0.2);
        record("recover.wav", 0.2);
        record("rock recover.wav", 0.7);
        Clip phrase = words().say("rock recover").orElseThrow();
        assertEquals(0.7, phrase.endSeconds() - phrase.onsetSeconds(), 0.005);
    }

    @Test
    void aPhraseIsJoinedOfAllItsWords() throws Exception {
        record("rock.wav", 0.2);
        record("recover.wav", 0.3);
        RecordedWords words = words();
        Clip rock = words.say("rock").orElseThrow();
        Clip phrase = words.say("rock recover").orElseThrow();
        assertEquals(0.2 + 0.03 + 0.3, phrase.endSeconds() - phrase.onsetSeconds(), 0.005);
        assertEquals(rock.centreSeconds(), phrase.centreSeconds());
        int end = Sounds.RATE.framesIn(rock.endSeconds());
        assertArrayEquals(Arrays.copyOf(rock.samples(), end), Arrays.copyOf(phrase.samples(), end));
    }

    @Test
    void aPhraseIsJoinedOfTheFewestFiles() throws Exception {
        record("right.wav", 0.2);
        record("kick ball change.wav", 0.6);
        record("right kick.wav", 0.1);
        record("ball.wav", 0.1);
        record("change.wav", 0.1);
        Clip phrase = words().say("R kick-ball-change").orElseThrow();
        assertEquals(0.2 + 0.03 + 0.6, phrase.endSeconds() - phrase.onsetSeconds(), 0.005);
    }

    @Test
    void theFirstOfTwoFilesIsTakenWithAWarning() throws Exception {
        record("Rock.mp3", 0.2);
        record("rock.wav", 0.4);
        RecordedWords words = words();
        Clip rock = words.say("rock").orElseThrow();
        assertEquals(0.2, rock.endSeconds() - rock.onsetSeconds(), 0.005);
        assertEquals(List.of("recorded_twice"), kinds(words));
        assertTrue(words.problems().get(0).file().endsWith("rock.wav"));
    }

    @Test
    void whatCannotBeUsedIsToldAndNotSaid() throws Exception {
        file("broken.wav");
        put("quiet.wav", Sounds.sound(Sounds.silence(0.5)));
        put("speech.wav", Sounds.sound(Sounds.vowel(5.5)));
        put("nothing.wav", Sounds.sound());
        record("!!!.wav", 0.3);
        record("rock.wav", 0.3);
        RecordedWords words = words();
        assertEquals(
                List.of(
                        "recording_without_word",
                        "recording_unreadable",
                        "recording_silent",
                        "recording_silent",
                        "recording_too_long"),
                kinds(words));
        for (Problem problem : words.problems()) {
            assertEquals(Problem.Severity.WARNING, problem.severity());
            assertTrue(Path.of(problem.file()).startsWith(folder));
            assertTrue(!problem.tryThis().isEmpty(), problem.message());
        }
        for (String word : List.of("broken", "quiet", "speech", "nothing")) {
            assertEquals(Optional.empty(), words.say(word), word);
        }
        assertTrue(words.say("rock").isPresent());
    }

    @Test
    void otherFilesAreNobodysBusiness() throws Exception {
        record("rock.wav", 0.3);
        file("._step.wav");
        file("readme.txt");
        file("noending");
        Files.createDirectory(folder.resolve("old.wav"));
        assertEquals(List.of(), words().problems());
    }

    @Test
    void anEmptyFolderIsTold() throws Refused {
        assertEquals(List.of("no_recorded_words"), kinds(words()));
    }

    @Test
    void aFolderThatIsNoneIsRefused() throws IOException {
        Path missing = folder.resolve("gone");
        Path file = Files.createFile(folder.resolve("file.wav"));
        for (Path wrong : List.of(missing, file)) {
            Refused refused = assertThrows(Refused.class, () -> new RecordedWords(wrong, this::read, Sounds.RATE));
            assertTrue(refused.getMessage().contains(wrong.toString()), refused.getMessage());
        }
    }

    @Test
    void anotherRateIsConverted() throws Exception {
        record("rock.wav", 0.3);
        Clip rock = new RecordedWords(folder, this::read, new SampleRate(48_000))
                .say("rock")
                .orElseThrow();
        assertEquals(48_000, rock.rate().hz());
        assertEquals(0.3, rock.endSeconds() - rock.onsetSeconds(), 0.005);
    }

    @Test
    void ownWordsComeBeforeTheBuiltInVoice() throws Exception {
        record("rock.wav", 0.3);
        Voice both = new Voices(List.of(words(), word -> Optional.of(Sounds.clip("built in", 0.5))));
        assertEquals("rock", both.say("rock").orElseThrow().words());
        assertEquals("built in", both.say("rock step").orElseThrow().words());
    }

    private static List<String> kinds(RecordedWords words) {
        return words.problems().stream().map(Problem::kind).toList();
    }

    private RecordedWords words() throws Refused {
        return new RecordedWords(folder, this::read, Sounds.RATE);
    }

    /** A vowel in a quiet room. */
    private void record(String file, double seconds) throws IOException {
        MonoSound word = Sounds.sound(Sounds.silence(0.4), Sounds.vowel(seconds), Sounds.silence(0.3));
        put(file, Sounds.over(word, Sounds.noise(1, 0.0003)));
    }

    private void put(String file, MonoSound sound) throws IOException {
        file(file);
        sounds.put(file, sound);
    }

    private void file(String file) throws IOException {
        Files.createFile(folder.resolve(file));
    }

    private MonoSound read(Path file) throws Refused {
        MonoSound sound = sounds.get(file.getFileName().toString());
        if (sound == null) {
            throw new Refused(file + " is not a sound file: choose another.");
        }
        return sound;
    }
}
