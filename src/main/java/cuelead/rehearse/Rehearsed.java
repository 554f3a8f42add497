package cuelead.rehearse;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How one rehearsal went, as it is kept over the days.
 *
 * @param at        to the minute
 * @param counts    calls of each kind
 * @param usualMs   how late calls were in the middle; empty when none was of the right word
 * @param steadyMs  half of the calls lay within so many milliseconds of that
 * @param notOnTime the {@link CallPlaces} where a third of the calls or more did not go right
 */
public record Rehearsed(
        LocalDateTime at,
        Map<CallKind, Long> counts,
        OptionalDouble usualMs,
        OptionalDouble steadyMs,
        List<String> notOnTime) {
    private static final double TROUBLE_PART = 1 / 3.0;

    public Rehearsed {
        counts = Map.copyOf(counts);
        notOnTime = List.copyOf(notOnTime);
    }

    /** What is to be kept of a review. */
    public static Rehearsed of(Review review, LocalDateTime at) {
        Map<CallKind, Long> counts = new LinkedHashMap<>();
        for (CallKind kind : CallKind.values()) {
            counts.put(kind, review.count(kind));
        }
        return new Rehearsed(
                at.truncatedTo(ChronoUnit.MINUTES),
                counts,
                review.usualErrorMs(),
                review.usualErrorMs().isPresent() ? review.unsteadinessMs() : OptionalDouble.empty(),
                troubles(review));
    }

    private static List<String> troubles(Review review) {
        List<ReviewedCall> planned = review.calls().stream()
                .filter(call -> call.planned().isPresent())
                .toList();
        List<String> places = CallPlaces.of(
                planned.stream().map(call -> call.planned().orElseThrow()).toList());
        Map<String, int[]> wrongOfAll = new LinkedHashMap<>();
        for (int i = 0; i < planned.size(); i++) {
            int[] counted = wrongOfAll.computeIfAbsent(places.get(i), none -> new int[2]);
            counted[0] += planned.get(i).kind() == CallKind.OK ? 0 : 1;
            counted[1]++;
        }
        return wrongOfAll.entrySet().stream()
                .filter(place -> place.getValue()[0] > 0)
                .filter(place -> place.getValue()[0] >= TROUBLE_PART * place.getValue()[1])
                .map(Map.Entry::getKey)
                .toList();
    }

    /** How many calls were planned. */
    public long planned() {
        return counts.values().stream().mapToLong(Long::longValue).sum() - counts.getOrDefault(CallKind.EXTRA, 0L);
    }

    /** How many were on time. */
    public long onTime() {
        return counts.getOrDefault(CallKind.OK, 0L);
    }
}
