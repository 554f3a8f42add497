package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a dance fits its song, in sentences; the song of {@link Calls} has 120 beats a minute. */
class FitListingTest {
    /** Eight counts with a half turn; a song of 14.2 s ends in wall 2 (count 1 is at 8 s, wall 2 begins at 12 s). */
    @Test
    void wallsEndingAndFinish() {
        List<String> lines = FitListing.lines(Calls.timeline(14.2), "The song");
        assertTrue(lines.get(0).startsWith("2 walls, "), lines.get(0));
        assertTrue(lines.get(0).endsWith("120 beats a minute."), lines.get(0));
        assertEquals("The song ends in wall 2, on count 5, facing 6 o'clock.", lines.get(1));
        assertTrue(
                lines.get(2).startsWith("To finish to the front: turn 1/2 R with the step on count 5 of wall 2"),
                lines.get(2));
        assertTrue(lines.get(2).endsWith(", and hold 12 o'clock."), lines.get(2));
    }

    @Test
    void whatEndsAtTheFrontNeedsNoFinish() {
        List<String> lines = FitListing.lines(Calls.timeline(15.9), "The track");
        assertEquals(List.of("The track ends with the last count of wall 2, facing 12 o'clock."), lines.subList(1, 2));
        assertEquals(2, lines.size());
    }

    /** Wall 2 begins at 12 s, facing the back; no count of it has turned when the music ends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.3|turn 1/2 R with the first step of wall 2",
                "12.6|turn 1/2 R with the step on count 2 of wall 2",
                "15.9|-"
            })
    void aFinishWhereNothingTurns(double seconds, String expected) {
        List<String> lines = FitListing.lines(Calls.timeline(seconds), "The song");
        assertEquals(
                expected.equals("-")
                        ? List.of()
                        : List.of("To finish to the front: " + expected + ", and hold 12 o'clock."),
                lines.subList(2, lines.size()));
    }

    @Test
    void aSongThatIsTooShort() {
        assertEquals(List.of("The song ends before count 1."), FitListing.lines(Calls.timeline(7), "The song"));
    }
}
