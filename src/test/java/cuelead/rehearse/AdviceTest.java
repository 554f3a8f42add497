package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AdviceTest {
    private final List<ReviewedCall> calls = new ArrayList<>();

    private void call(int wall, String section, String planned, String said, double errorMs) {
        double seconds = 2 + calls.size();
        PlannedCall call = PlannedCall.of(planned, seconds, OptionalDouble.of(seconds + 1), 2, wall, section);
        if (said.isEmpty()) {
            calls.add(ReviewedCall.missed(call));
            return;
        }
        double heard = seconds + errorMs / 1_000;
        calls.add(ReviewedCall.called(call, new HeardWord(said, heard, heard, heard + 0.3), heard));
    }

    private List<String> advice() {
        return Advice.on(new Review(calls)).stream().map(Finding::sentence).toList();
    }

    private static void assertAny(List<String> advice, String begin) {
        assertTrue(advice.stream().anyMatch(sentence -> sentence.startsWith(begin)), advice.toString());
    }

    @Test
    void whoIsOnTimeNeedsNone() {
        for (int i = 0; i < 12; i++) {
            call(1 + i / 6, "S" + (1 + i % 2), "step " + i, "step " + i, i % 2 == 0 ? 20 : -20);
        }
        assertEquals(List.of(), advice());
    }

    @Test
    void lateIntoOneSection() {
        for (int wall = 1; wall <= 3; wall++) {
            for (int i = 0; i < 4; i++) {
                call(wall, "S1", "step", "step", 5 * i);
            }
            for (int i = 0; i < 2; i++) {
                call(wall, "S3", "rock " + wall + i, "rock " + wall + i, 90 + i);
            }
        }
        assertAny(advice(), "You are 90 ms late in section 3, all 6 times: breathe");
    }

    @Test
    void lateOnTurns() {
        for (int i = 0; i < 8; i++) {
            call(0, "", "step " + i, "step " + i, 0);
            call(0, "", i % 2 == 0 ? "turn" : "pivot", i % 2 == 0 ? "turn" : "pivot", 80);
        }
        assertAny(advice(), "You are 80 ms late on turns, all 8 times: breathe");
    }

    @Test
    void allLate() {
        for (int i = 0; i < 8; i++) {
            call(0, "", "step " + i, "step " + i, 70);
        }
        assertEquals("You call 70 ms late all through: breathe a beat earlier.", advice().get(0));
        assertEquals(1, advice().size());
    }

    @Test
    void rushingTowardsTheEndOfTheWall() {
        for (int i = 0; i < 24; i++) {
            call(1 + i / 12, "S1", "step " + i, "step " + i, 40 - 8 * (i % 12));
        }
        assertAny(advice(), "You rush towards the end of a wall, both times: calls come 64 ms earlier");
    }

    @Test
    void wordsLeftOutAndOtherWords() {
        call(1, "S1", "rock", "", 0);
        call(1, "S1", "rock", "", 0);
        call(1, "S1", "kick", "clap", 0);
        List<String> advice = advice();
        assertEquals("\"rock\" was left out both times: say it aloud with the steps.", advice.get(0));
        assertEquals("For \"kick\" you said \"clap\", once: learn that place by heart.", advice.get(1));
    }

    @Test
    void lateIntoASectionBothTimes() {
        for (int wall = 1; wall <= 2; wall++) {
            for (int section = 1; section <= 2; section++) {
                String first = section + " begins";
                call(wall, "S" + section, first, first, section == 2 ? 100 : 0);
                for (int i = 0; i < 4; i++) {
                    String word = "step " + wall + section + i;
                    call(wall, "S" + section, word, word, 5 * i - 10);
                }
            }
        }
        // the word itself is as late, but that are the same calls
        assertEquals(List.of("You are 100 ms late on \"2 begins\", both times: breathe a beat earlier."), advice());
    }

    @Test
    void aWordThatIsLateEachTimeItComesIsATrendButOnceIsNone() {
        for (int wall = 1; wall <= 2; wall++) {
            for (int i = 0; i < 6; i++) {
                call(wall, "", "step " + i, "step " + i, i == 3 ? 90 : 0);
            }
        }
        call(2, "", "kick", "kick", 250);
        assertEquals(List.of("You are 90 ms late on \"step 3\", both times: breathe a beat earlier."), advice());
    }

    @Test
    void trendsComeBeforeWhatHappensHereAndThereAndThatBeforeSingleSlips() {
        for (int i = 0; i < 16; i++) {
            call(0, "", "step " + i, i % 4 == 0 ? "" : "step " + i, 0);
            if (i % 2 == 0) {
                call(0, "", "turn", "turn", 40);
            }
        }
        call(0, "", "kick", "clap", 0);
        List<String> advice = advice();
        assertEquals(3, advice.size(), advice.toString());
        assertTrue(advice.get(0).startsWith("You are 40 ms late on turns, all 8 times"), advice.toString());
        assertTrue(advice.get(1).startsWith("4 calls were left out"), advice.toString());
        assertTrue(advice.get(2).startsWith("For \"kick\""), advice.toString());
    }

    @Test
    void theMiddleAndTheSpreadAreMedians() {
        for (double error : new double[] {-10, 0, 10, 20, 400}) {
            call(0, "", "step", "step", error);
        }
        Review review = new Review(calls);
        assertEquals(10, review.usualErrorMs().orElseThrow(), 1e-6);
        assertEquals(10, review.unsteadinessMs().orElseThrow(), 1e-6);
        assertEquals(5, review.planned());
        assertEquals(1, review.count(CallKind.LATE));
    }
}
