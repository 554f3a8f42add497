package cuelead.rehearse;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How the calls of a take landed.
 *
 * @param calls all planned calls and all that was said besides, in order
 */
public record Review(List<ReviewedCall> calls) {
    public Review {
        calls = List.copyOf(calls);
    }

    public long count(CallKind kind) {
        return calls.stream().filter(call -> call.kind() == kind).count();
    }

    /** How many were planned. */
    public long planned() {
        return calls.size() - count(CallKind.EXTRA);
    }

    /** The calls of the right word, whose times can be compared. */
    public List<ReviewedCall> timed() {
        return calls.stream()
                .filter(call ->
                        call.kind() == CallKind.OK || call.kind() == CallKind.EARLY || call.kind() == CallKind.LATE)
                .toList();
    }

    /** How late calls are in the middle, milliseconds; empty when none is timed. */
    public OptionalDouble usualErrorMs() {
        return median(errors(timed()));
    }

    /** Half of the calls lie within so many milliseconds of the usual error; empty when none is timed. */
    public OptionalDouble unsteadinessMs() {
        double usual = usualErrorMs().orElse(0);
        return median(Arrays.stream(errors(timed()))
                .map(error -> Math.abs(error - usual))
                .toArray());
    }

    /** How long a beat is in the middle; empty where that is not known. */
    public OptionalDouble beatSeconds() {
        return median(calls.stream()
                .flatMap(call -> call.planned().stream())
                .flatMapToDouble(planned -> planned.beatLength().stream())
                .toArray());
    }

    static double[] errors(List<ReviewedCall> calls) {
        return calls.stream().flatMapToDouble(call -> call.errorMs().stream()).toArray();
    }

    static OptionalDouble median(double[] values) {
        if (values.length == 0) {
            return OptionalDouble.empty();
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return OptionalDouble.of((sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2);
    }
}
