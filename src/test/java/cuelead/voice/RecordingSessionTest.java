package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecordingSessionTest {
    private static final MonoSound TAKE = Sounds.sound(Sounds.silence(0.5), Sounds.vowel(0.3), Sounds.silence(1));

    private final RecordingSession session = new RecordingSession(
            List.of("rock", "touch", "step", "hold"), List.of("rock", "step"), RecordingSession.Asked.MISSING);

    @Test
    void onlyMissingWordsAreAskedFor() {
        assertEquals("touch", session.word());
        session.take(TAKE);
        session.accepted();
        assertEquals("hold", session.word());
        assertEquals(List.of("hold"), session.missing());
        session.accepted();
        assertTrue(session.isOver());
        assertEquals(List.of(), session.missing());
    }

    @Test
    void oneMayGoBackAndLeaveOut() {
        session.back();
        assertEquals("rock", session.word());
        session.back();
        assertEquals("rock", session.word());
        session.skip();
        session.skip();
        assertEquals("step", session.word());
        session.skip();
        session.skip();
        assertTrue(session.isOver());
        assertEquals(List.of("touch", "hold"), session.missing());
    }

    @Test
    void aNudgedMarkIsByEarAndMovesTheCentreOfTheClip() {
        session.take(TAKE);
        double heard = session.taken().orElseThrow().mark().orElseThrow().centreSeconds();
        double before = session.clip(Sounds.RATE).orElseThrow().centreSeconds();
        session.nudge(0.02);
        Mark nudged = session.taken().orElseThrow().mark().orElseThrow();
        assertEquals(heard + 0.02, nudged.centreSeconds(), 1e-9);
        assertEquals(Mark.By.EAR, nudged.by());
        assertEquals(before + 0.02, session.clip(Sounds.RATE).orElseThrow().centreSeconds(), 1e-9);
        session.nudge(-60);
        assertEquals(0, session.taken().orElseThrow().mark().orElseThrow().centreSeconds());
    }

    @Test
    void withoutAWordThereIsNothingToNudgeOrHear() {
        session.take(Sounds.sound(Sounds.silence(1)));
        session.nudge(0.01);
        assertEquals(Optional.empty(), session.taken().orElseThrow().mark());
        assertEquals(Optional.empty(), session.clip(Sounds.RATE));
    }
}
