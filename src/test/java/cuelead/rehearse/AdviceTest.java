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
        return Advice.on(new Review(calls)).stream()
                .map(Advice.Finding::sentence)
                .toList();
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
        assertAny(advice(), "You are 90 ms late in section S3 (6 calls)");
    }

    @Test
    void lateOnTurns() {
        for (int i = 0; i < 8; i++) {
            call(0, "", "step " + i, "step " + i, 0);
            call(0, "", i % 2 == 0 ? "turn" : "pivot", i % 2 == 0 ? "turn" : "pivot", 80);
        }
        assertAny(advice(), "You are 80 ms late on turns (8 calls)");
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
        assertAny(advice(), "You rush towards the end of a wall: calls come 64 ms earlier");
    }

    @Test
    void wordsLeftOutAndOtherWords() {
        call(1, "S1", "rock", "", 0);
        call(1, "S1", "rock", "", 0);
        call(1, "S1", "kick", "clap", 0);
        List<String> advice = advice();
        assertEquals("\"rock\" was left out twice: say it aloud with the steps.", advice.get(0));
        assertEquals("For \"kick\" you said \"clap\": learn that place by heart.", advice.get(1));
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
