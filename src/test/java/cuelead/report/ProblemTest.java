package cuelead.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Problem.Severity;
import org.junit.jupiter.api.Test;

class ProblemTest {
    /** {@code file:line:column: severity: message}, as compilers print it (GNU Coding Standards, 4.4). */
    @Test
    void theMessageNamesThePlaceAsFarAsItIsKnown() {
        assertEquals("a.txt:3:7: error: It rains. Stay in.", message(3, 7, "Stay in."));
        assertEquals("a.txt:3: error: It rains. Stay in.", message(3, 0, "Stay in."));
        assertEquals("a.txt: error: It rains. Stay in.", message(0, 0, "Stay in."));
        assertEquals("a.txt: error: It rains.", message(0, 7, ""));
    }

    private static String message(int line, int column, String tryThis) {
        return new Problem(Severity.ERROR, "rain", "a.txt", line, column, "It rains.", tryThis).message();
    }
}
