package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program itself need not be there: a script stands for it. */
class EspeakVoiceTest {
    @TempDir
    private Path folder;

    @Test
    void withoutTheProgramItIsRefusedInOneSentence() {
        EspeakVoice voice = new EspeakVoice(folder.resolve("gone").toString(), Sounds.RATE, Pronunciations.NONE);
        String told = assertThrows(Refused.class, () -> voice.say("rock")).getMessage();
        assertTrue(told.contains("espeak-ng") && told.contains("--voice"), told);
    }

    @Test
    void whatCannotBeSpokenIsNotSilence() throws Refused {
        EspeakVoice voice = new EspeakVoice(folder.resolve("gone").toString(), Sounds.RATE, Pronunciations.NONE);
        assertEquals(Optional.empty(), voice.say("!!!"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void takesTheWordsAndReadsTheSound() throws Exception {
        Path wav = folder.resolve("tone.wav");
        Path script = folder.resolve("espeak-ng");
        Files.write(wav, Sounds.wavToAPipe(16_000, 0.3));
        Files.writeString(script, "#!/bin/sh\necho \"$@\" > '" + folder + "/asked'\ncat '" + wav + "'\n");
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
        Pronunciations said =
                PronunciationFile.of("mine.txt", "chasse = sha say").pronunciations();
        Clip clip = new EspeakVoice(script.toString(), Sounds.RATE, said)
                .say("1/2 R chasse")
                .orElseThrow();
        assertTrue(Files.readString(folder.resolve("asked")).endsWith("-- half right sha say\n"));
        assertEquals("1/2 R chasse", clip.words());
        assertEquals(0.3, clip.endSeconds() - clip.onsetSeconds(), 0.02);
        assertEquals(Sounds.RATE, clip.rate());
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aProgramThatGivesNoSoundIsRefused() throws Exception {
        Path script = folder.resolve("espeak-ng");
        Files.writeString(script, "#!/bin/sh\nexit 1\n");
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
        EspeakVoice voice = new EspeakVoice(script.toString(), Sounds.RATE, Pronunciations.NONE);
        assertTrue(assertThrows(Refused.class, () -> voice.say("rock"))
                .getMessage()
                .contains("no sound"));
    }
}
