package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.plan.Timeline;
import cuelead.steer.Calls;
import cuelead.steer.Follower;
import cuelead.steer.Scene;
import cuelead.steer.SongEnd;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Count 1 of the small dance is at 8 s, a count lasts half a second, wall 2 begins at 12 s and faces the back. */
class FollowerTest {
    private final Timeline timeline = Calls.timeline(14.2);
    private final Follower follower =
            new Follower(List.of(Calls.countIn("six", 6.5, 6), Calls.word("side", 7, 1), Calls.word("close", 7.5, 2)));

    private String lineAt(double songSeconds) {
        return OneLine.of(Scene.of(Calls.moment(timeline, songSeconds), follower), 79);
    }

    @Test
    void beforeTheDanceItCountsDown() {
        assertEquals("0:00  Starts in 16 beats  [ ]  next: six", lineAt(0));
        assertEquals("0:07  Starts in 1 beat  [close]", lineAt(7.75));
        assertEquals("0:00  Starts in 17 beats  [ ]  next: six", lineAt(-0.01));
    }

    @Test
    void aCallStandsUntilItsBeatAndACountInWordUntilItsEnd() {
        assertEquals("0:06  Starts in 3 beats  [six]  next: side", lineAt(6.5));
        assertEquals("0:06  Starts in 3 beats  [ ]  next: side", lineAt(6.75));
        assertEquals("0:06  Starts in 3 beats  [side]  next: close", lineAt(6.9));
        assertEquals("0:08  Wall 1  (12 o'clock)  S1  count 1  [close]", lineAt(8.4));
        assertEquals("0:08  Wall 1  (12 o'clock)  S1  count 2  [ ]", lineAt(8.5));
    }

    @Test
    void theWallIsTheOneThatIsDancedAndFaced() {
        assertEquals("0:11  Wall 1  (6 o'clock)  S1  count 8  [ ]", lineAt(11.5));
        assertEquals("0:12  Wall 2  (6 o'clock)  S1  count 1  [ ]", lineAt(12));
        assertEquals("0:14  The dance is over  [ ]", lineAt(14.5));
    }

    @Test
    void eachCallIsToldOnce() {
        assertEquals(
                List.of("six", "side"),
                follower.startingIn(0, 7).stream().map(call -> call.words()).toList());
        assertEquals(
                List.of("close"),
                follower.startingIn(7, 20).stream().map(call -> call.words()).toList());
    }

    @Test
    void aCallAsALine() {
        assertEquals("  0:06.9  wall 1    S1    1    side", CallLine.of(Calls.word("side", 7, 1)));
        assertEquals("  0:06.4  count-in        6    six", CallLine.of(Calls.countIn("six", 6.5, 6)));
    }

    @Test
    void theEndingIsOneSentence() {
        assertEquals(
                "The song ends in wall 2, on count 5, facing 6 o'clock.", SongEnd.of(Calls.timeline(14.2), "The song"));
        assertEquals(
                "The track ends with the last count of wall 2, facing 12 o'clock.",
                SongEnd.of(Calls.timeline(15.9), "The track"));
        assertEquals("The song ends before count 1.", SongEnd.of(Calls.timeline(7), "The song"));
    }
}
