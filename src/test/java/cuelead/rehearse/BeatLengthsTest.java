package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BeatLengthsTest {
    private static final double BEAT = 60 / 104.0;

    private static PlannedCall call(double seconds, OptionalDouble beat, double leadBeats) {
        return PlannedCall.of("step", seconds, beat, leadBeats, 1, "S1");
    }

    private static List<OptionalDouble> lengths(List<PlannedCall> plan) {
        return BeatLengths.filled(plan).stream().map(PlannedCall::beatLength).toList();
    }

    /** Calls for beats of so many seconds, a lead before them. */
    private static List<PlannedCall> plan(double beatSeconds, double leadBeats, double... beats) {
        List<PlannedCall> plan = new ArrayList<>();
        for (double beat : beats) {
            plan.add(call((beat - leadBeats) * beatSeconds, OptionalDouble.of(beat * beatSeconds), 0));
        }
        return plan;
    }

    @Test
    void aCountInWordTakesTheBeatOfTheNearestCall() {
        PlannedCall countIn = call(1, OptionalDouble.empty(), 0);
        PlannedCall first = call(2, OptionalDouble.of(3), 2);
        PlannedCall later = call(9, OptionalDouble.of(9.4), 1);
        assertEquals(0.5, lengths(List.of(countIn, first, later)).get(0).getAsDouble(), 1e-9);
    }

    @Test
    void whereNoLeadIsToldTheBeatsTellIt() {
        for (double length : new double[] {0.4, BEAT, 0.7}) {
            for (double lead : new double[] {1, 2}) {
                List<PlannedCall> plan = plan(length, lead, 10, 11.5, 13, 14, 15, 18, 20);
                assertEquals(length, lengths(plan).get(3).getAsDouble(), 1e-6, length + " s, lead " + lead);
            }
        }
    }

    @Test
    void aBeatThatIsNotSteadyIsNotTold() {
        assertEquals(
                OptionalDouble.empty(),
                lengths(plan(1, 0, 1, 2.37, 3.11, 5.03, 6.6, 9.49)).get(0));
        assertEquals(
                OptionalDouble.empty(),
                lengths(List.of(call(1, OptionalDouble.empty(), 0))).get(0));
    }
}
