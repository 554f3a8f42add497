package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PromptTest {
    private static double ahead(double beatSeconds) {
        PlannedCall call = PlannedCall.of("rock", 10, OptionalDouble.of(10 + 2 * beatSeconds), 2, 1, "S1");
        return 10 - Prompt.of(call).breatheSeconds();
    }

    @Test
    void itComesABeatAheadAndNeverTooLateToBreathe() {
        assertEquals(0.62, ahead(0.62), 1e-9);
        assertEquals(1.1, ahead(1.1), 1e-9);
        assertEquals(0.5, ahead(0.4), 1e-9);
    }
}
