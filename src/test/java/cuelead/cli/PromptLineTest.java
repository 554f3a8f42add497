package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.rehearse.PlannedCall;
import cuelead.studio.RehearsalScene;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PromptLineTest {
    private static final PlannedCall ROCK = PlannedCall.of("rock", 5, OptionalDouble.of(6), 2, 1, "S1");
    private static final PlannedCall RECOVER = PlannedCall.of("recover", 5.5, OptionalDouble.of(6.5), 2, 1, "S1");

    @Test
    void theLineShowsThePlaceAndWhatToBreatheFor() {
        assertEquals(
                "0:02  wall 1  S1   ...",
                PromptLine.of(new RehearsalScene(2, ROCK, Optional.empty(), Optional.empty())));
        assertEquals(
                "0:04  wall 1  S1   [ rock ]   then recover",
                PromptLine.of(new RehearsalScene(4.6, ROCK, Optional.of(ROCK), Optional.of(RECOVER))));
    }
}
