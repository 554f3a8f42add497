package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.plan.CallSettings;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CallChoicesTest {
    /** What is shown changes by half a beat, whatever the speed of the song. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.5, 0.6, 0.65, 0.75, 0.8, 0.95, 1, 1.1})
    void aLeadIsChangedByHalfABeatAsItIsHeard(double speed) {
        List<CallSettings> ordered = new ArrayList<>();
        CallSettings usual = CallSettings.withLead(CallSettings.DEFAULT_LEAD);
        CallChoices choices = new CallChoices(usual, () -> speed, ordered::add);
        double before = choices.wanted().lead().toDecimal();
        choices.longerLead();
        assertEquals(before + 0.5, choices.wanted().lead().toDecimal());
        choices.longerLead();
        assertEquals(before + 1, choices.wanted().lead().toDecimal());
        choices.shorterLead();
        choices.shorterLead();
        assertEquals(before, choices.wanted().lead().toDecimal());
        assertEquals(4, ordered.size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.75, 1})
    void aLeadNeverLeavesItsRange(double speed) {
        CallChoices choices = new CallChoices(CallSettings.withLead(Beats.ONE), () -> speed, wanted -> {});
        for (int i = 0; i < 40; i++) {
            choices.shorterLead();
        }
        assertEquals(0.5, choices.wanted().lead().toDecimal());
        assertEquals("Calls come half a beat ahead already.", choices.shorterLead());
    }
}
