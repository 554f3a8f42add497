package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PronunciationFileTest {
    @TempDir
    private Path folder;

    @Test
    void wordsAndPhrasesAreSaidInOtherWords() {
        Pronunciations said = good("# mine\n\nChass\u00e9 = sha say  # French\nkick ball change = kick and change\n");
        assertEquals("right sha say", said.respelled("right chasse"));
        assertEquals("kick and change kick", said.respelled("kick ball change kick"));
        assertEquals("ball change", said.respelled("ball change"));
    }

    /** A word may be made clearer by more words, itself among them. */
    @Test
    void whatIsSaidIsNotReadAgain() {
        assertEquals("the tag the tag", good("tag = the tag").respelled("tag tag"));
    }

    @Test
    void theLongestPhraseCounts() {
        Pronunciations said = good("wall = wahl\nwall two = second wall");
        assertEquals("second wall wahl three", said.respelled("wall two wall three"));
    }

    @Test
    void soundsStandBetweenSlashes() {
        Pronunciations said = good("hook = /HH uh1  k/");
        assertEquals(Map.of("hook", List.of("hh", "uh1", "k")), said.sounds());
        assertEquals("hook", said.respelled("hook"));
    }

    @Test
    void theBuiltInVoiceSaysThem() throws Refused {
        Pronunciations said = good("hook = /k ae1 t/\nhold = stay");
        SynthVoice voice = new SynthVoice(Sounds.RATE, said);
        assertEquals(List.of("k", "ae", "t"), phones(voice, "hook"));
        assertEquals(phones(Sounds.SYNTH, "stay"), phones(voice, "hold"));
        assertEquals("hold", voice.say("hold").orElseThrow().words());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "chasse sha say | 1 | There is no \"=\" in this line.",
                "= sha say | 1 | No word stands before the \"=\".",
                "hook = | 7 | Nothing stands behind the \"=\".",
                "hook = /hh uh1 k | 17 | The second \"/\" is missing.",
                "hook = /hh uq1 k/ | 12 | \"uq1\" is no sound of the built-in voice.",
                "hook = /hh k/ | 8 | There is no vowel among these sounds.",
                "kick ball = /k ih1 k/ | 13 | Sounds can be given for single words only.",
                "hook = \u3042 | 8 | Nothing behind the \"=\" can be spoken."
            })
    void aMistakeHasItsLineAndColumn(String line, int column, String sentence) {
        PronunciationFile.Read read = PronunciationFile.of("mine.txt", "# mine\n" + line + "\nhold = stay\n");
        assertEquals(1, read.problems().size(), read.problems().toString());
        Problem problem = read.problems().get(0);
        assertEquals(2, problem.line());
        assertEquals(column, problem.column());
        assertEquals(sentence, problem.sentence());
        assertTrue(!problem.tryThis().isEmpty());
        assertEquals("stay", read.pronunciations().respelled("hold"), "the other lines count");
    }

    @Test
    void theFirstOfTwoCounts() {
        PronunciationFile.Read read = PronunciationFile.of("mine.txt", "hold = stay\nHOLD = wait");
        assertEquals("stay", read.pronunciations().respelled("hold"));
        assertEquals(2, read.problems().get(0).line());
        assertTrue(read.problems().get(0).sentence().contains("line 1"));
    }

    @Test
    void otherPronunciationsAreKeptApart() {
        assertEquals("", Pronunciations.NONE.key());
        assertEquals(good("hold = stay").key(), good("# again\nhold=stay").key());
        assertNotEquals(good("hold = stay").key(), good("hold = wait").key());
    }

    @Test
    void aFileThatIsNotThereIsRefused() {
        Path gone = folder.resolve("gone.txt");
        assertTrue(assertThrows(Refused.class, () -> PronunciationFile.read(gone))
                .getMessage()
                .contains("gone.txt"));
    }

    @Test
    void aFileInAnotherEncodingIsRefused() throws Exception {
        Path file = Files.write(folder.resolve("old.txt"), new byte[] {'a', '=', (byte) 0xe9});
        assertTrue(assertThrows(Refused.class, () -> PronunciationFile.read(file))
                .getMessage()
                .contains("UTF-8"));
    }

    private static List<String> phones(Voice voice, String words) throws Refused {
        return voice.say(words).orElseThrow().phones().stream()
                .map(Clip.Phone::name)
                .filter(name -> !name.equals("pau"))
                .toList();
    }

    private static Pronunciations good(String text) {
        PronunciationFile.Read read = PronunciationFile.of("mine.txt", text);
        assertEquals(List.of(), read.problems());
        return read.pronunciations();
    }
}
