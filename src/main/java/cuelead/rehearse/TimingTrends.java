package cuelead.rehearse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Calls of a section, a wall, a kind or a word that come early or late in the same way, and walls that are rushed. What
 * lies within the spread that every caller has is no trend.
 */
final class TimingTrends {
    private static final int FEW = 2;
    private static final int SOME = 3;
    /** A shift of some calls that can be told from chance, and by a dancer. */
    private static final double NOTABLE_MS = 35;
    /** So many of a group must lean to the same side; of a few, all. */
    private static final double MOST_PART = 0.75;

    private final Review review;
    private final List<ReviewedCall> timed;
    private final double usualMs;
    private final List<Finding> findings = new ArrayList<>();

    TimingTrends(Review review) {
        this.review = review;
        timed = review.timed();
        usualMs = review.usualErrorMs().orElse(0);
    }

    /** Each trend once; used once. */
    List<Finding> find() {
        findUsual();
        lean(timed, TimingTrends::section, "in ", SOME);
        lean(timed, TimingTrends::wall, "in ", SOME);
        lean(timed, call -> planned(call).isTurn() ? "turns" : "", "on ", FEW);
        lean(timed, call -> "\"" + planned(call).word() + "\"", "on ", FEW);
        lean(firstOfSections(), TimingTrends::section, "into ", FEW);
        findRushing();
        return findings;
    }

    private static PlannedCall planned(ReviewedCall call) {
        return call.planned().orElseThrow();
    }

    private static String section(ReviewedCall call) {
        String section = planned(call).section();
        return section.matches("S\\d+") ? "section " + section.substring(1) : section;
    }

    private static String wall(ReviewedCall call) {
        int wall = planned(call).wall();
        return wall > 0 ? "wall " + wall : "";
    }

    private List<ReviewedCall> firstOfSections() {
        List<ReviewedCall> first = new ArrayList<>();
        String last = "";
        for (ReviewedCall call : review.calls()) {
            if (call.planned().isPresent()) {
                String now = section(call) + " of " + wall(call);
                if (!now.equals(last) && timed.contains(call)) {
                    first.add(call);
                }
                last = now;
            }
        }
        return first;
    }

    private void findUsual() {
        if (timed.size() >= SOME && Math.abs(usualMs) >= NOTABLE_MS) {
            // of all calls, so that it does not hide what is said of some
            add("You call " + late(usualMs) + " all through: " + cure(usualMs), Set.of(), timed.size(), usualMs);
        }
    }

    /** Groups of calls that lean to one side of where the others lie. */
    private void lean(List<ReviewedCall> calls, Function<ReviewedCall, String> group, String where, int fewest) {
        Map<String, List<ReviewedCall>> groups =
                calls.stream().collect(Collectors.groupingBy(group, LinkedHashMap::new, Collectors.toList()));
        groups.remove("");
        groups.forEach((name, members) -> {
            boolean isAll = members.size() == timed.size();
            if (!isAll && members.size() >= fewest && isTrend(Review.errors(members))) {
                double middle = Review.median(Review.errors(members)).orElseThrow();
                add(
                        "You are " + late(middle) + " " + where + name + ", " + howOften(members, middle) + ": "
                                + cure(middle),
                        Set.copyOf(members),
                        members.size(),
                        middle);
            }
        });
    }

    private boolean isTrend(double[] errorsMs) {
        double middle = Review.median(errorsMs).orElse(0);
        if (errorsMs.length < SOME) {
            return Arrays.stream(errorsMs)
                            .allMatch(error -> Math.abs(error) > CallKind.ON_TIME_MS && error * middle > 0)
                    && Math.abs(middle - usualMs) >= NOTABLE_MS;
        }
        long sameSide = Arrays.stream(errorsMs)
                .filter(error -> (error - usualMs) * (middle - usualMs) > 0)
                .count();
        return Math.abs(middle - usualMs) >= NOTABLE_MS
                && Math.abs(middle) >= NOTABLE_MS
                && sameSide >= MOST_PART * errorsMs.length;
    }

    private static String howOften(List<ReviewedCall> calls, double middleMs) {
        long sameSide = Arrays.stream(Review.errors(calls))
                .filter(error -> error * middleMs > 0)
                .count();
        return Finding.howOften(sameSide, calls.size());
    }

    /** From the first to the last third of a wall, or of the take where nothing is known of walls. */
    private void findRushing() {
        Map<Integer, List<ReviewedCall>> walls = timed.stream()
                .collect(Collectors.groupingBy(call -> planned(call).wall(), LinkedHashMap::new, Collectors.toList()));
        walls.values().removeIf(calls -> calls.size() < SOME);
        List<ReviewedCall> beginnings = new ArrayList<>();
        List<ReviewedCall> ends = new ArrayList<>();
        for (List<ReviewedCall> wall : walls.values()) {
            beginnings.addAll(beginning(wall));
            ends.addAll(end(wall));
        }
        double change = middle(ends) - middle(beginnings);
        if (beginnings.size() < SOME || Math.abs(change) < NOTABLE_MS) {
            return;
        }
        long alike = walls.values().stream()
                .filter(wall -> (middle(end(wall)) - middle(beginning(wall))) * Math.signum(change) >= NOTABLE_MS)
                .count();
        boolean knowsWalls = walls.size() > 1;
        add(
                (change < 0 ? "You rush" : "You drag") + " towards the end of "
                        + (knowsWalls ? "a wall, " + Finding.howOften(alike, walls.size()) : "the take")
                        + ": calls come " + String.format(Locale.ROOT, "%.0f", Math.abs(change)) + " ms "
                        + (change < 0 ? "earlier" : "later")
                        + " than at its beginning. Keep stepping the beat while you call.",
                Set.copyOf(ends),
                ends.size(),
                change);
    }

    private static List<ReviewedCall> beginning(List<ReviewedCall> wall) {
        return wall.subList(0, wall.size() / SOME);
    }

    private static List<ReviewedCall> end(List<ReviewedCall> wall) {
        return wall.subList(wall.size() - wall.size() / SOME, wall.size());
    }

    private static double middle(List<ReviewedCall> calls) {
        return Review.median(Review.errors(calls)).orElse(0);
    }

    private static String late(double ms) {
        return String.format(Locale.ROOT, "%.0f ms %s", Math.abs(ms), ms < 0 ? "early" : "late");
    }

    private static String cure(double ms) {
        return ms < 0 ? "wait for the beat before." : "breathe a beat earlier.";
    }

    private void add(String sentence, Set<ReviewedCall> calls, int count, double ms) {
        findings.add(new Finding(Finding.Rank.TREND, sentence, calls, count * Math.abs(ms) / 100));
    }
}
