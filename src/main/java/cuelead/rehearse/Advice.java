package cuelead.rehearse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is worth working on, in a teacher's words: calls of a kind, a section, a wall or a word that go wrong in the same
 * way. What happened once is no trend, and neither is what lies within the spread that every caller has.
 */
public final class Advice {
    /** Fewer calls make no trend. */
    private static final int FEWEST = 3;
    /** A shift that can be told from chance, and by a dancer. */
    private static final double NOTABLE_MS = 35;
    /** So many of a group must lean to the same side. */
    private static final double MOST_PART = 0.75;

    /**
     * One thing to work on.
     *
     * @param weight how many calls it spoils, more or less
     */
    public record Finding(String sentence, double weight) {}

    private final Review review;
    private final List<Finding> findings = new ArrayList<>();

    private Advice(Review review) {
        this.review = review;
    }

    /** All that can be said, the weightiest first. */
    public static List<Finding> on(Review review) {
        Advice advice = new Advice(review);
        advice.findWords();
        advice.findLeanings();
        advice.findRushing();
        advice.findings.sort(Comparator.comparingDouble(Finding::weight).reversed());
        return List.copyOf(advice.findings);
    }

    private void findWords() {
        byWord(CallKind.MISSED).forEach((word, calls) -> {
            if (calls.size() > 1) {
                add(
                        "\"" + word + "\" was left out " + times(calls.size()) + ": say it aloud with the steps.",
                        calls.size());
            }
        });
        byWord(CallKind.WRONG).forEach((word, calls) -> {
            String others = calls.stream()
                    .map(call -> "\"" + call.heard().orElseThrow().word() + "\"")
                    .distinct()
                    .collect(Collectors.joining(", "));
            add("For \"" + word + "\" you said " + others + ": learn that place by heart.", calls.size());
        });
        long missed = review.count(CallKind.MISSED);
        if (missed >= FEWEST) {
            add(
                    missed + " calls were left out: breathe earlier, and call fewer words where time is short.",
                    missed * 0.9);
        }
        long extra = review.count(CallKind.EXTRA);
        if (extra >= FEWEST) {
            add(extra + " words were said that no step needs: they hide the calls around them.", extra * 0.6);
        }
    }

    private Map<String, List<ReviewedCall>> byWord(CallKind kind) {
        return review.calls().stream()
                .filter(call -> call.kind() == kind)
                .collect(Collectors.groupingBy(
                        call -> call.planned().orElseThrow().word(), LinkedHashMap::new, Collectors.toList()));
    }

    private void findLeanings() {
        List<ReviewedCall> timed = review.timed();
        double usual = review.usualErrorMs().orElse(0);
        if (timed.size() >= FEWEST && Math.abs(usual) >= NOTABLE_MS) {
            add("You call " + late(usual) + " all through: " + cure(usual), timed.size() * Math.abs(usual) / 100);
        }
        lean(timed, Advice::section, "in section ", usual);
        lean(timed, Advice::wall, "in wall ", usual);
        lean(timed, call -> call.planned().orElseThrow().isTurn() ? "turns" : "", "on ", usual);
        lean(timed, call -> "\"" + call.planned().orElseThrow().word() + "\"", "on ", usual);
        lean(firstOfSections(), Advice::section, "into section ", usual);
    }

    private static String section(ReviewedCall call) {
        return call.planned().orElseThrow().section();
    }

    private static String wall(ReviewedCall call) {
        int wall = call.planned().orElseThrow().wall();
        return wall > 0 ? Integer.toString(wall) : "";
    }

    private List<ReviewedCall> firstOfSections() {
        List<ReviewedCall> first = new ArrayList<>();
        String last = "";
        for (ReviewedCall call : review.timed()) {
            String now = section(call) + " of " + wall(call);
            if (!now.equals(last)) {
                first.add(call);
            }
            last = now;
        }
        return first;
    }

    /** Groups of calls that lean to one side of where the others lie. */
    private void lean(List<ReviewedCall> calls, Function<ReviewedCall, String> group, String where, double usualMs) {
        Map<String, List<ReviewedCall>> groups =
                calls.stream().collect(Collectors.groupingBy(group, LinkedHashMap::new, Collectors.toList()));
        groups.remove("");
        if (groups.size() == 1 && groups.values().iterator().next().size() == calls.size()) {
            return;
        }
        groups.forEach((name, members) -> {
            double[] errors = Review.errors(members);
            double middle = Review.median(errors).orElse(0);
            long sameSide = java.util.Arrays.stream(errors)
                    .filter(error -> (error - usualMs) * (middle - usualMs) > 0)
                    .count();
            boolean isTrend = errors.length >= FEWEST
                    && Math.abs(middle - usualMs) >= NOTABLE_MS
                    && Math.abs(middle) >= NOTABLE_MS
                    && sameSide >= MOST_PART * errors.length;
            if (isTrend) {
                add(
                        "You are " + late(middle) + " " + where + name + " (" + errors.length + " calls): "
                                + cure(middle),
                        errors.length * Math.abs(middle) / 100);
            }
        });
    }

    /** From the first to the last quarter of a wall, or of the take where nothing is known of walls. */
    private void findRushing() {
        List<Double> beginnings = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        Map<Integer, List<ReviewedCall>> walls = review.timed().stream()
                .collect(Collectors.groupingBy(
                        call -> call.planned().orElseThrow().wall(), LinkedHashMap::new, Collectors.toList()));
        for (List<ReviewedCall> wall : walls.values()) {
            int part = wall.size() / 3;
            for (int i = 0; i < part; i++) {
                beginnings.add(wall.get(i).errorMs().orElseThrow());
                ends.add(wall.get(wall.size() - 1 - i).errorMs().orElseThrow());
            }
        }
        if (beginnings.size() < FEWEST) {
            return;
        }
        double change = middle(ends) - middle(beginnings);
        if (Math.abs(change) >= NOTABLE_MS) {
            String place = walls.size() > 1 ? "a wall" : "the take";
            String what = change < 0 ? "You rush" : "You drag";
            add(
                    what + " towards the end of " + place + ": calls come "
                            + String.format(Locale.ROOT, "%.0f", Math.abs(change)) + " ms "
                            + (change < 0 ? "earlier" : "later")
                            + " than at its beginning. Keep stepping the beat while you call.",
                    ends.size() * Math.abs(change) / 100);
        }
    }

    private static double middle(List<Double> values) {
        return Review.median(values.stream().mapToDouble(Double::doubleValue).toArray())
                .orElse(0);
    }

    private static String late(double ms) {
        return String.format(Locale.ROOT, "%.0f ms %s", Math.abs(ms), ms < 0 ? "early" : "late");
    }

    private static String cure(double ms) {
        return ms < 0 ? "wait for the beat before." : "breathe a beat earlier.";
    }

    private static String times(int count) {
        return count == 2 ? "twice" : count + " times";
    }

    private void add(String sentence, double weight) {
        findings.add(new Finding(sentence, weight));
    }
}
