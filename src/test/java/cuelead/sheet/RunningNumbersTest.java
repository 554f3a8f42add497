package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts before the steps, and each step's own count in brackets behind it. */
class RunningNumbersTest {
    private static final String SHEET = """
            TIDE MARK
            [1-8] DRIFT
            1,2   Step R side (1), step L behind R (2)
            3,4   1/4 turn R stepping R fwd (3), scuff L fwd (4) - 3.00
            5,6   Step L fwd (5), 1/4 pivot R (6) - 6.00
            7,8   Cross L over R (7), hold (8)
            [9-16] DRIFT ON
            1,2   Touch L toe side (1), drop L heel (2)
            3,4   Touch R toe across L (3), drop R heel (4)
            5,6   Rock L side (5), recover R (6)
            7,8   Cross L over R (7), hold (8)
            [17-24] LOCKS
            1-4   Step R fwd to diag (1), lock L behind R (2), step R fwd to diag (3), scuff L (4)
            5-8   Step L fwd to diag (5), lock R behind L (6), step L fwd to diag (7), scuff R (8)
            """;

    /** No length is told by the 1 of a quarter turn. */
    @Test
    void aFractionBehindTheCountsIsATurn() {
        assertEquals(
                List.of(),
                SheetFixtures.messages(SHEET).stream()
                        .filter(message -> message.contains("not understood") || message.contains("actions"))
                        .toList());
        List<String> rows =
                SheetDump.rows(SheetReader.read("sheet.txt", SHEET).dance().orElseThrow());
        assertEquals("S1\t3\t3\tR\tstep\tfwd\t90\t3:00\tR\tF\tvine_quarter", rows.get(2));
        assertEquals("S1\t6\t6\tR\tpivot\tplace\t90\t6:00\tR\tF\tpivot_quarter", rows.get(5));
    }
}
