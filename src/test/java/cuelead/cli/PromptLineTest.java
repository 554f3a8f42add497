package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Progress;
import cuelead.rehearse.Prompts;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PromptLineTest {
    private static final List<PlannedCall> PLAN = List.of(
            PlannedCall.of("rock", 5, OptionalDouble.of(6), 2, 1, "S1"),
            PlannedCall.of("recover", 5.5, OptionalDouble.of(6.5), 2, 1, "S1"),
            PlannedCall.of("touch", 9, OptionalDouble.of(10), 2, 2, "S1"));

    private final PromptLine line = new PromptLine(PLAN, new Prompts(PLAN, Progress.NONE).of(Prompts.Amount.ALL));

    @Test
    void aPromptIsDueWhenItIsTimeToBreatheAndOnlyOnce() {
        assertEquals(Optional.empty(), line.due(4.49));
        assertEquals(Optional.of("0:04.5  rock"), line.due(4.5));
        assertEquals(Optional.empty(), line.due(4.9));
        assertEquals(Optional.of("0:09.0  recover"), line.due(9));
        assertEquals(Optional.of("0:09.0  touch"), line.due(9));
        assertEquals(Optional.empty(), line.due(100));
    }

    @Test
    void theLineShowsThePlaceAndWhatToBreatheFor() {
        assertEquals("0:02  wall 1  S1   ...", line.at(2));
        line.due(4.6);
        assertEquals("0:04  wall 1  S1   [ rock ]   then recover", line.at(4.6));
        line.due(5.1);
        assertEquals("0:05  wall 1  S1   [ recover ]   then touch", line.at(5.1));
        assertEquals("0:06  wall 2  S1   ...", line.at(6));
    }
}
