package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MatchingTest {
    private static final double ROUND_TRIP = 0.08;

    static PlannedCall planned(String word, double seconds) {
        return PlannedCall.of(word, seconds, OptionalDouble.empty(), 0, 0, "");
    }

    static HeardWord heard(String word, double songSeconds) {
        double centre = songSeconds + ROUND_TRIP;
        return new HeardWord(word, centre - 0.1, centre, centre + 0.3);
    }

    private static List<ReviewedCall> match(List<PlannedCall> plan, HeardWord... heard) {
        return new Matching(plan, List.of(heard), ROUND_TRIP).calls();
    }

    private static String kinds(List<ReviewedCall> calls) {
        return calls.stream().map(call -> call.kind().word()).collect(Collectors.joining(" "));
    }

    private static final List<PlannedCall> PLAN =
            List.of(planned("step", 5), planned("touch", 6), planned("rock", 7), planned("recover", 8));

    @Test
    void callsOnTimeAreOk() {
        List<ReviewedCall> calls =
                match(PLAN, heard("step", 5.02), heard("touch", 5.95), heard("rock", 7), heard("recover", 8.05));
        assertEquals("ok ok ok ok", kinds(calls));
        assertEquals(20, calls.get(0).errorMs().orElseThrow(), 1e-6);
        assertEquals(-50, calls.get(1).errorMs().orElseThrow(), 1e-6);
    }

    @Test
    void earlyLateMissedOtherAndExtra() {
        assertEquals(
                "early late extra wrong missed",
                kinds(match(PLAN, heard("step", 4.8), heard("touch", 6.3), heard("okay", 6.65), heard("kick", 7.01))));
    }

    @Test
    void aWordFarAwayIsNotMeantForTheCall() {
        assertEquals("missed extra", kinds(match(List.of(planned("step", 5)), heard("step", 6.5))));
    }

    @Test
    void anotherWordBetweenTwoCallsIsExtra() {
        assertEquals("missed extra missed", kinds(match(List.of(planned("a", 5), planned("b", 7)), heard("c", 6))));
    }

    @Test
    void aMissedCallDoesNotShiftTheNext() {
        assertEquals(
                "missed ok ok ok",
                kinds(match(PLAN, heard("touch", 6.01), heard("rock", 7.01), heard("recover", 8.01))));
    }

    @Test
    void nothingHeardAndNothingPlanned() {
        assertEquals("missed missed missed missed", kinds(match(PLAN)));
        assertEquals("extra", kinds(match(List.of(), heard("step", 5))));
        assertTrue(match(List.of()).isEmpty());
    }

    @Property(tries = 200)
    void everyCallAndEveryWordComesOnce(
            @ForAll @Size(max = 8) List<@DoubleRange(min = 0, max = 10) Double> planTimes,
            @ForAll @Size(max = 8) List<@DoubleRange(min = 0, max = 10) Double> heardTimes) {
        List<PlannedCall> plan = new ArrayList<>();
        planTimes.stream().distinct().sorted().forEach(time -> plan.add(planned("w" + (int) (time * 3) % 3, time)));
        List<HeardWord> heard = new ArrayList<>();
        heardTimes.stream().distinct().sorted().forEach(time -> heard.add(heard("w" + (int) (time * 5) % 3, time)));
        List<ReviewedCall> calls = new Matching(plan, heard, ROUND_TRIP).calls();
        assertEquals(
                plan, calls.stream().flatMap(call -> call.planned().stream()).toList());
        assertEquals(
                heard,
                calls.stream()
                        .flatMap(call -> call.heard().stream())
                        .sorted(Comparator.comparingDouble(HeardWord::centreSeconds))
                        .toList());
    }
}
