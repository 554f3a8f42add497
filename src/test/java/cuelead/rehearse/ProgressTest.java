package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final Path FILE = Path.of("progress.txt");
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 27, 12, 0, 30);

    private static PlannedCall planned(String word, double seconds, int wall, String section) {
        return PlannedCall.of(word, seconds, OptionalDouble.empty(), 0, wall, section);
    }

    private static ReviewedCall said(PlannedCall planned, double lateSeconds) {
        double at = planned.seconds() + lateSeconds;
        return ReviewedCall.called(planned, new HeardWord(planned.word(), at, at, at + 0.2), at);
    }

    /** Three walls of two calls; of "turn" some come late, and one step is missed in one of three walls. */
    private static Review review(double turnLateSeconds) {
        List<ReviewedCall> calls = new ArrayList<>();
        for (int wall = 1; wall <= 3; wall++) {
            PlannedCall step = planned("step", 10 * wall, wall, "S1");
            calls.add(wall == 2 ? ReviewedCall.missed(step) : said(step, 0.01));
            calls.add(said(planned("step", 10 * wall + 2, wall, "S1"), 0));
            calls.add(said(planned("turn", 10 * wall + 4, wall, "S2"), turnLateSeconds));
        }
        return new Review(calls);
    }

    @Test
    void itIsReadAsItWasWritten() throws Exception {
        Progress progress = Progress.NONE
                .with(Rehearsed.of(review(0.2), NOON))
                .with(Rehearsed.of(new Review(List.of(ReviewedCall.missed(planned("turn", 1, 0, "")))), NOON));
        assertEquals(progress.text(), Progress.of(progress.text(), FILE).text());
        Rehearsed first = Progress.of(progress.text(), FILE).rehearsals().get(0);
        assertEquals(9, first.planned());
        assertEquals(5, first.onTime());
        assertEquals(List.of("S1 step", "S2 turn"), first.notOnTime());
        assertTrue(progress.rehearsals().get(1).usualMs().isEmpty());
    }

    @Test
    void whatWentWrongTheLastThreeTimesIsKnown() {
        Progress progress = Progress.NONE.with(Rehearsed.of(review(0.2), NOON));
        assertEquals(Set.of("S1 step", "S2 turn"), progress.notOnTime());
        Rehearsed good = Rehearsed.of(new Review(List.of(said(planned("turn", 1, 1, "S2"), 0))), NOON);
        assertEquals(
                Set.of("S1 step", "S2 turn"), progress.with(good).with(good).notOnTime());
        assertEquals(Set.of(), progress.with(good).with(good).with(good).notOnTime());
    }

    @Test
    void aLineThatIsNoneOfOursIsRefusedWithItsPlace() {
        String good = Progress.NONE.with(Rehearsed.of(review(0), NOON)).text();
        for (String bad : List.of("not ours", good.lines().toList().get(2).replace("2026-11-27", "soon"), "\t\t")) {
            Refused refused = assertThrows(Refused.class, () -> Progress.of(good + bad + "x\n", FILE));
            assertTrue(refused.getMessage().startsWith("progress.txt:4:1: this line is no rehearsal"), bad);
        }
    }
}
