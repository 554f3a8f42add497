package cuelead.studio;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Progress;
import cuelead.rehearse.Prompts;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PromptTimesTest {
    private static final List<PlannedCall> PLAN = List.of(
            PlannedCall.of("rock", 5, OptionalDouble.of(6), 2, 1, "S1"),
            PlannedCall.of("recover", 5.5, OptionalDouble.of(6.5), 2, 1, "S1"),
            PlannedCall.of("touch", 9, OptionalDouble.of(10), 2, 2, "S1"));

    private final PromptTimes times = new PromptTimes(PLAN, new Prompts(PLAN, Progress.NONE).of(Prompts.Amount.ALL));

    private Optional<String> due(double songSeconds) {
        return times.due(songSeconds).map(prompt -> prompt.call().word());
    }

    private static Optional<String> word(Optional<PlannedCall> call) {
        return call.map(PlannedCall::word);
    }

    @Test
    void aPromptIsDueWhenItIsTimeToBreatheAndOnlyOnce() {
        assertEquals(Optional.empty(), due(4.49));
        assertEquals(Optional.of("rock"), due(4.5));
        assertEquals(Optional.empty(), due(4.9));
        assertEquals(Optional.of("recover"), due(9));
        assertEquals(Optional.of("touch"), due(9));
        assertEquals(Optional.empty(), due(100));
    }

    @Test
    void theSceneShowsThePlaceAndWhatToBreatheFor() {
        assertEquals(Optional.empty(), times.at(2).prompted());
        times.due(4.6);
        assertEquals(Optional.of("rock"), word(times.at(4.6).prompted()));
        assertEquals(Optional.of("recover"), word(times.at(4.6).then()));
        times.due(5.1);
        assertEquals(Optional.of("touch"), word(times.at(5.1).then()));
        assertEquals(2, times.at(6).place().wall());
        assertEquals(Optional.empty(), times.at(6).prompted());
    }
}
