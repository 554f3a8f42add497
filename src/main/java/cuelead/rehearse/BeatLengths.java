package cuelead.rehearse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How long a beat is where the calls of a plan do not say it: as near other calls, or as the beats of the plan are apart. */
public final class BeatLengths {
    private static final double SHORTEST_SECONDS = 0.33;
    private static final double LONGEST_SECONDS = 1.2;
    /** Of several lengths that fit as well, the nearest to this one is taken: the middle of the usual tempos. */
    private static final double USUAL_SECONDS = 0.55;
    /** Of a beat. */
    private static final double TOLERANCE = 0.05;
    /** The part of the distances that a length must divide; those that it divides into half beats count half. */
    private static final double FITTING = 0.75;

    private static final double AS_WELL = 0.15;
    private static final int FEWEST = 4;
    /** Two calls are not further apart than a wall is long. */
    private static final int MOST_BEATS = 16;

    private BeatLengths() {}

    /** The same plan, each of whose calls knows its beat as far as the plan says anything of it. */
    public static List<PlannedCall> filled(List<PlannedCall> plan) {
        List<PlannedCall> known =
                plan.stream().filter(call -> call.beatLength().isPresent()).toList();
        OptionalDouble all = known.isEmpty() ? ofDistances(distances(plan)) : OptionalDouble.empty();
        return plan.stream()
                .map(call -> call.beatLength().isPresent() ? call : call.withBeatLength(nearest(call, known, all)))
                .toList();
    }

    private static OptionalDouble nearest(PlannedCall call, List<PlannedCall> known, OptionalDouble otherwise) {
        return known.stream()
                .min(Comparator.comparingDouble(other -> Math.abs(other.seconds() - call.seconds())))
                .map(PlannedCall::beatLength)
                .orElse(otherwise);
    }

    /** From beat to beat, and from calls to their beats: seconds. */
    private static List<Double> distances(List<PlannedCall> plan) {
        List<Double> distances = new ArrayList<>();
        double[] beats = plan.stream()
                .flatMapToDouble(call -> call.beatSeconds().stream())
                .distinct()
                .sorted()
                .toArray();
        for (int i = 1; i < beats.length; i++) {
            distances.add(beats[i] - beats[i - 1]);
        }
        for (PlannedCall call : plan) {
            call.beatSeconds().ifPresent(beat -> distances.add(beat - call.seconds()));
        }
        distances.removeIf(distance -> distance < SHORTEST_SECONDS / 2);
        return distances;
    }

    private static OptionalDouble ofDistances(List<Double> distances) {
        if (distances.size() < FEWEST) {
            return OptionalDouble.empty();
        }
        List<Double> lengths = distances.stream().flatMap(BeatLengths::parts).toList();
        double best = lengths.stream()
                .mapToDouble(length -> fit(length, distances))
                .max()
                .orElse(0);
        return lengths.stream()
                .filter(length -> fit(length, distances) >= Math.max(FITTING, best - AS_WELL))
                .min(Comparator.comparingDouble(length -> Math.abs(Math.log(length / USUAL_SECONDS))))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** The lengths of a beat that a distance may consist of. */
    private static Stream<Double> parts(double distance) {
        return IntStream.rangeClosed(1, MOST_BEATS)
                .mapToObj(beats -> distance / beats)
                .filter(length -> length >= SHORTEST_SECONDS && length <= LONGEST_SECONDS);
    }

    private static double fit(double length, List<Double> distances) {
        return distances.stream()
                .mapToDouble(distance -> isWhole(distance / length) ? 1 : isWhole(2 * distance / length) ? 0.5 : 0)
                .average()
                .orElse(0);
    }

    private static boolean isWhole(double beats) {
        return Math.abs(beats - Math.rint(beats)) < TOLERANCE && beats > TOLERANCE;
    }
}
