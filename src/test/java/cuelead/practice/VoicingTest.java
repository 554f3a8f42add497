package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VoicingTest {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final int RECORDED_HZ = 48_000;

    private final List<Problem> problems = new ArrayList<>();

    @TempDir
    private Path folder;

    @Test
    void recordedWordsAreDecodedAndTakenFirst() throws Exception {
        tone(folder.resolve("rock.wav"), 0.25);
        tone(folder.resolve("step.mp3"), 0.25);
        Files.writeString(folder.resolve("hold.wav"), "this is no sound at all");
        Voice voice = Voicing.of(VoiceWish.USUAL.withOwnWords(Optional.of(folder)), folder.resolve("cache"))
                .at(RATE, problems);
        Clip rock = voice.say("rock").orElseThrow();
        assertEquals(RATE, rock.rate());
        assertEquals(0.25, rock.endSeconds() - rock.onsetSeconds(), 0.01);
        assertEquals(List.of(), rock.phones());
        assertTrue(!voice.say("hold").orElseThrow().phones().isEmpty(), "the built-in voice says what is broken");
        assertEquals(
                List.of("recording_unreadable", "misnamed"),
                problems.stream().map(Problem::kind).toList());
        assertTrue(problems.get(0).message().contains("hold.wav"));
    }

    @Test
    void aMissingFolderIsRefused() {
        assertThrows(
                Refused.class,
                () -> Voicing.of(
                                VoiceWish.USUAL.withOwnWords(Optional.of(folder.resolve("gone"))),
                                folder.resolve("cache"))
                        .at(RATE, problems));
    }

    /** Stereo, 16 bits: silence, 1 kHz, silence. */
    private static void tone(Path file, double seconds) throws IOException {
        int pause = RECORDED_HZ / 2;
        int frames = (int) (seconds * RECORDED_HZ);
        byte[] bytes = new byte[4 * (frames + 2 * pause)];
        for (int i = 0; i < frames; i++) {
            int sample = (int) (8_000 * Math.sin(2 * Math.PI * 1_000 * i / RECORDED_HZ));
            for (int channel = 0; channel < 2; channel++) {
                int at = 4 * (pause + i) + 2 * channel;
                bytes[at] = (byte) sample;
                bytes[at + 1] = (byte) (sample >> 8);
            }
        }
        AudioFormat format = new AudioFormat(RECORDED_HZ, 16, 2, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes), format, bytes.length / 4),
                AudioFileFormat.Type.WAVE,
                file.toFile());
    }
}
