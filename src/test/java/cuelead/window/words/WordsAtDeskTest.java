package cuelead.window.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeMicrophone;
import cuelead.FakeSpeakers;
import cuelead.output.TakeFolder;
import cuelead.practice.Voicing;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.steer.WordDesk.Phase;
import cuelead.steer.WordDevices;
import cuelead.steer.WordKeeping;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.FolderMarks;
import cuelead.voice.Mark;
import cuelead.voice.MarkFile;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WordsAtDeskTest {
    private static final SampleRate RATE = new SampleRate(16_000);

    @TempDir
    private Path folder;

    private final Room room = new Room();
    private final List<String> spoken = new ArrayList<>();
    private WordsAtDesk words;

    /** Opens what is asked for. */
    private static final class Room implements WordDevices {
        private final FakeSpeakers speakers = new FakeSpeakers(RATE);
        private final FakeMicrophone microphone = new FakeMicrophone(RATE);
        private Optional<TakeBuffer> buffer = Optional.empty();
        private boolean isMicrophoneThere = true;
        private long nanos;

        @Override
        public SampleRate rate() {
            return RATE;
        }

        @Override
        public Speakers speakers() {
            return speakers;
        }

        @Override
        public TakeBuffer microphone() throws Refused {
            if (!isMicrophoneThere) {
                throw new Refused("No microphone.");
            }
            if (buffer.isEmpty()) {
                buffer = Optional.of(new TakeBuffer(microphone, () -> nanos));
            }
            return buffer.get();
        }

        @Override
        public Optional<TakeBuffer> listening() {
            return buffer;
        }

        @Override
        public void hush() {
            speakers.stop();
        }
    }

    @BeforeEach
    void open() throws Exception {
        words = opened();
    }

    private WordsAtDesk opened() throws Refused {
        FolderMarks before = FolderMarks.of(folder, Voicing.wordFiles());
        RecordingSession session =
                new RecordingSession(List.of("ah", "oh", "ee"), before.words(), RecordingSession.Asked.MISSING);
        WordKeeping keeping = new WordKeeping(folder, new TakeFolder(folder), before, Voicing.wordFiles());
        return new WordsAtDesk(session, room, keeping, text -> {
            spoken.add(text);
            return text.equals("ee")
                    ? Optional.empty()
                    : Optional.of(new Clip(text, RATE, new float[1600], 0, 0.05, 0.1, List.of()));
        });
    }

    private void pass(double seconds) throws Exception {
        for (double left = seconds; left > 0; left -= FakeMicrophone.LOOK_SECONDS) {
            room.nanos += (long) (FakeMicrophone.LOOK_SECONDS * TimeUnit.SECONDS.toNanos(1));
            room.speakers.hear(FakeMicrophone.LOOK_SECONDS);
            words.tick();
        }
    }

    /** The count-in, the word, and the rest of the take. */
    private void hearTake() throws Exception {
        pass(2.04);
        room.microphone.speak();
        pass(2.3);
    }

    private void take() throws Exception {
        words.recordOrNot();
        hearTake();
    }

    private Map<String, String> files() throws Exception {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(file.getFileName().toString(), Base64.getEncoder().encodeToString(Files.readAllBytes(file)));
            }
        }
        return files;
    }

    @Test
    void everyWordIsShownWithWhoSaysIt() throws Exception {
        take();
        words.keep();
        WordsScene scene = words.scene();
        assertEquals(
                List.of(
                        new WordsScene.Word("ah", true),
                        new WordsScene.Word("oh", false),
                        new WordsScene.Word("ee", false)),
                scene.words());
        assertEquals("ah", scene.word());
        assertEquals(Phase.RECORDED, scene.phase());
        words = opened();
        assertEquals("oh", words.scene().word());
        assertEquals(1, words.scene().recorded());
    }

    @Test
    void aWordIsCountedInTakenAndShownWithItsMark() throws Exception {
        words.recordOrNot();
        pass(0.1);
        assertEquals(Phase.COUNT_IN, words.scene().phase());
        pass(1.94);
        assertEquals(Phase.TAKING, words.scene().phase());
        room.microphone.speak();
        pass(0.7);
        assertTrue(words.scene().level() > 10, "level " + words.scene().level());
        pass(1.6);
        WordsScene judged = words.scene();
        assertEquals(Phase.JUDGED, judged.phase());
        assertEquals("Good. Keep it, or record it again.", judged.told());
        // somebody speaks half a second after the last click has died away, for 0.3 s
        assertEquals(0.6, judged.mark().orElseThrow().centreSeconds(), 0.12);
        assertEquals(2.2, judged.shape().orElseThrow().seconds(), 0.01);
        assertSame(judged.shape().get(), words.scene().shape().orElseThrow());
    }

    @Test
    void whatWasKeptIsTakenBackAsIfItHadNeverBeenKept() throws Exception {
        Map<String, String> before = files();
        take();
        words.keep();
        assertTrue(files().containsKey("ah.wav"));
        words.takeBack();
        assertEquals(before, files());
        assertFalse(words.scene().can().takeBack());
        assertEquals(0, words.scene().recorded());
        assertTrue(Files.exists(folder.resolve("takes/ah-1.wav")));
    }

    @Test
    void aSecondRecordingIsTakenBackToTheFirst() throws Exception {
        take();
        words.keep();
        Map<String, String> first = files();
        room.microphone.louder(2);
        take();
        words.keep();
        assertFalse(first.equals(files()));
        words.takeBack();
        assertEquals(first, files());
        assertEquals(Phase.RECORDED, words.scene().phase());
    }

    /** A recording of the user's own making, under a name of its own. */
    @Test
    void aFileThatStoodThereComesBackUnderItsName() throws Exception {
        take();
        words.keep();
        Files.move(folder.resolve("ah.wav"), folder.resolve("Ah!.wav"));
        Files.delete(folder.resolve(MarkFile.NAME));
        words = opened();
        words.goTo("ah");
        Map<String, String> before = files();
        take();
        words.keep();
        take();
        words.keep();
        assertEquals(List.of("ah.wav", "marks.txt"), List.copyOf(files().keySet()));
        words.takeBack();
        words.takeBack();
        assertEquals(before, files());
    }

    @Test
    void theMarkOfARecordingIsMovedAtOnceAndTakenBack() throws Exception {
        take();
        words.keep();
        Map<String, String> before = files();
        double heard = words.scene().mark().orElseThrow().centreSeconds();
        words.nudge(0.005);
        words.nudge(0.005);
        Mark moved = MarkFile.read(folder).marks().get("ah.wav");
        assertEquals(heard + 0.01, moved.centreSeconds(), 1e-3);
        assertEquals(Mark.By.EAR, moved.by());
        words.markAt(1.5);
        assertEquals(1.5, MarkFile.read(folder).marks().get("ah.wav").centreSeconds(), 1e-3);
        words.takeBack();
        assertEquals(before, files());
        assertEquals(heard, words.scene().mark().orElseThrow().centreSeconds(), 1e-3);
    }

    @Test
    void theMissingOnesAreRecordedInARow() throws Exception {
        words.goTo("oh");
        take();
        words.keep();
        words.rowOrNot();
        assertEquals("ah", words.scene().word());
        hearTake();
        assertEquals("ee", words.scene().word());
        hearTake();
        assertFalse(words.scene().isRow());
        assertEquals(3, words.scene().recorded());
        words.rowOrNot();
        assertFalse(words.scene().isRow());
    }

    @Test
    void aTakeIsGivenUpByTheSameOrder() throws Exception {
        words.recordOrNot();
        pass(1);
        words.recordOrNot();
        pass(4);
        assertEquals(Phase.READY, words.scene().phase());
        assertFalse(Files.exists(folder.resolve("takes")));
    }

    @Test
    void whatIsNotRecordedIsSaidByTheVoice() throws Exception {
        words.play();
        assertEquals(List.of("ah"), spoken);
        assertFalse(room.speakers.hasEnded());
        words.goTo("ee");
        Refused refused = assertThrows(Refused.class, () -> words.play());
        assertEquals("The voice cannot say \"ee\": record it.", refused.getMessage());
    }

    @Test
    void withoutAMicrophoneTheWordStaysAsItIs() throws Exception {
        room.isMicrophoneThere = false;
        assertThrows(Refused.class, () -> words.recordOrNot());
        words.giveUp();
        assertEquals(Phase.READY, words.scene().phase());
    }

    @Test
    void aMicrophoneThatGivesNothingIsToldAndNothingIsKept() throws Exception {
        room.microphone.mute();
        take();
        assertTrue(
                words.scene().told().startsWith("The microphone gives nothing at all"),
                words.scene().told());
        assertFalse(words.scene().can().keep());
        assertEquals(0, words.scene().level());
    }

    @Test
    void aTakeThatIsTooLoudIsToldAndMayBeKept() throws Exception {
        room.microphone.louder(20);
        take();
        assertTrue(words.scene().told().startsWith("Too loud"), words.scene().told());
        assertTrue(words.scene().can().keep());
        assertEquals(WordsScene.FULL_LEVEL, WordsScene.level(1));
    }

    @Test
    void aMicrophoneThatIsTakenAwayEndsTheTake() throws Exception {
        words.recordOrNot();
        pass(1);
        room.microphone.lose();
        Refused refused = assertThrows(Refused.class, () -> pass(0.1));
        assertTrue(refused.getMessage().startsWith("The microphone is gone."), refused.getMessage());
        words.giveUp();
        assertEquals(Phase.READY, words.scene().phase());
    }
}
