package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeMicrophone;
import cuelead.FakeSpeakers;
import cuelead.output.TakeFolder;
import cuelead.practice.Voicing;
import cuelead.report.Refused;
import cuelead.steer.WordKeeping;
import cuelead.time.SampleRate;
import cuelead.voice.FolderMarks;
import cuelead.voice.Mark;
import cuelead.voice.MarkFile;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordDeskTest {
    private static final SampleRate RATE = new SampleRate(16_000);
    private static final double LOOK_SECONDS = FakeMicrophone.LOOK_SECONDS;

    @TempDir
    private Path folder;

    private final FakeSpeakers speakers = new FakeSpeakers(RATE);
    private final FakeMicrophone microphone = new FakeMicrophone(RATE);
    private long nanos;
    private RecordingSession session;

    @BeforeEach
    void twoWords() {
        session = new RecordingSession(List.of("ah", "oh"), List.of(), RecordingSession.Asked.MISSING);
    }

    private RecordDesk desk(RecordDesk.Steering steering) throws Refused {
        TakeFolder takes = new TakeFolder(folder);
        FolderMarks before = FolderMarks.of(folder, Voicing.wordFiles());
        WordKeeping keeping = new WordKeeping(folder, takes, before, Voicing.wordFiles());
        return new RecordDesk(session, new TakeBuffer(microphone, () -> nanos), speakers, keeping, steering);
    }

    private void pass(RecordDesk desk, double seconds) throws Refused {
        for (double left = seconds; left > 0; left -= LOOK_SECONDS) {
            nanos += (long) (LOOK_SECONDS * TimeUnit.SECONDS.toNanos(1));
            speakers.hear(LOOK_SECONDS);
            desk.tick();
        }
    }

    /** The count-in, a word or none, and the rest of the take. */
    private void take(RecordDesk desk, boolean isSpoken) throws Refused {
        pass(desk, 2);
        if (isSpoken) {
            microphone.speak();
        }
        pass(desk, 2.4);
    }

    @Test
    void aWordIsCountedInTakenMarkedNudgedAndKept() throws Exception {
        RecordDesk desk = desk(RecordDesk.Steering.BY_KEYS);
        pass(desk, 0.1);
        desk.obey(" ");
        take(desk, true);
        assertTrue(
                desk.line().startsWith("1 of 2  \"ah\"  good, 0.")
                        && desk.line().endsWith(" s: Enter keeps  space again  p plays"),
                desk.line());
        assertFalse(Files.exists(folder.resolve("ah.wav")));
        assertTrue(Files.exists(folder.resolve("takes/ah-1.wav")));
        double heard = session.taken().orElseThrow().mark().orElseThrow().centreSeconds();
        desk.obey("right");
        desk.obey("enter");
        assertTrue(Files.exists(folder.resolve("ah.wav")));
        Mark mark = MarkFile.read(folder).marks().get("ah.wav");
        assertEquals(Mark.By.EAR, mark.by());
        assertEquals(heard + 0.005, mark.centreSeconds(), 1e-4);
        assertEquals("oh", session.word());
    }

    @Test
    void aRecordedWordIsHeardMovedAndLeftAsItIs() throws Exception {
        RecordDesk desk = desk(RecordDesk.Steering.BY_KEYS);
        pass(desk, 0.1);
        desk.obey(" ");
        take(desk, true);
        desk.obey("enter");
        desk.obey("left"); // there is nothing of "oh" to move
        desk.obey("b");
        assertTrue(desk.line().startsWith("1 of 2  \"ah\"  recorded, 0."), desk.line());
        double heard = MarkFile.read(folder).marks().get("ah.wav").centreSeconds();
        desk.obey("right");
        desk.obey("up");
        Mark moved = MarkFile.read(folder).marks().get("ah.wav");
        assertEquals(heard + 0.025, moved.centreSeconds(), 1e-3);
        assertEquals(Mark.By.EAR, moved.by());
        desk.obey("enter");
        assertEquals("oh", session.word());
        assertEquals(List.of("oh"), session.missing());
    }

    @Test
    void allWordsCanBeAskedForAgain() throws Exception {
        RecordDesk first = desk(RecordDesk.Steering.BY_KEYS);
        pass(first, 0.1);
        first.obey(" ");
        take(first, true);
        first.obey("enter");
        session = new RecordingSession(List.of("ah", "oh"), List.of("ah"), RecordingSession.Asked.ALL);
        RecordDesk again = desk(RecordDesk.Steering.BY_KEYS);
        pass(again, 0.1);
        assertTrue(again.line().startsWith("1 of 2  \"ah\"  recorded"), again.line());
        again.obey(" ");
        take(again, true);
        again.obey("enter");
        assertEquals("oh", session.word());
        assertTrue(Files.exists(folder.resolve("takes/ah-2.wav")));
        again.obey("?");
        assertEquals(RecordKeys.TOLD, again.news());
        assertTrue(RecordKeys.TOLD.stream().allMatch(line -> line.length() < 60));
    }

    @Test
    void aTakeWithoutAWordIsToldAndNotAccepted() throws Exception {
        RecordDesk desk = desk(RecordDesk.Steering.BY_KEYS);
        pass(desk, 0.1);
        desk.obey(" ");
        take(desk, false);
        assertTrue(desk.news().get(0).startsWith("ah: No word is heard."));
        assertEquals("1 of 2  \"ah\"  space again  n leaves out", desk.line());
        desk.obey("enter");
        assertEquals("ah", session.word());
        assertFalse(Files.exists(folder.resolve("ah.wav")));
    }

    @Test
    void handsFreeItGoesOnByItselfAndLeavesOutWhatFailsThreeTimes() throws Exception {
        RecordDesk desk = desk(RecordDesk.Steering.HANDS_FREE);
        take(desk, false);
        take(desk, false);
        take(desk, false);
        take(desk, true);
        assertTrue(desk.isOver());
        assertEquals(List.of("ah"), session.missing());
        assertEquals(2 * 4, desk.news().size());
        assertTrue(Files.exists(folder.resolve("oh.wav")));
        assertTrue(Files.exists(folder.resolve("takes/ah-3.wav")));
    }

    @Test
    void anUnpluggedMicrophoneIsOneSentenceAndTakesStay() throws Exception {
        RecordDesk desk = desk(RecordDesk.Steering.HANDS_FREE);
        take(desk, true);
        microphone.lose();
        Refused refused = assertThrows(Refused.class, () -> pass(desk, 1));
        assertTrue(refused.getMessage().startsWith("The microphone is gone."), refused.getMessage());
        assertTrue(Files.exists(folder.resolve("ah.wav")));
    }

    @Test
    void aMutedMicrophoneEndsWhatGoesOnByItself() throws Exception {
        microphone.mute();
        RecordDesk desk = desk(RecordDesk.Steering.HANDS_FREE);
        take(desk, true);
        Refused refused = assertThrows(Refused.class, () -> pass(desk, 2 * 4.4));
        assertTrue(refused.getMessage().startsWith("The microphone gives nothing at all"), refused.getMessage());
        assertFalse(Files.exists(folder.resolve("takes")));
    }

    @Test
    void aMicrophoneThatGivesNothingIsTold() throws Exception {
        microphone.deafen();
        RecordDesk desk = desk(RecordDesk.Steering.BY_KEYS);
        Refused refused = assertThrows(Refused.class, () -> pass(desk, 7));
        assertTrue(refused.getMessage().startsWith("The microphone gives no sound"), refused.getMessage());
    }

    @Test
    void withoutAMicrophoneTheCommandSaysSo() {
        Bench.Outcome outcome = Bench.withDevice(folder)
                .run(
                        "record",
                        Bench.DEMO_SHEET,
                        "--hands-free",
                        "--folder",
                        folder.resolve("w").toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("No microphone."), outcome.err());
        assertEquals("", outcome.out());
    }
}
