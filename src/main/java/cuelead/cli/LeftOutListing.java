package cuelead.cli;

import cuelead.plan.DancedCount;
import cuelead.plan.LeftOut;
import cuelead.plan.Timeline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What was not called and why, in lines to be read. */
final class LeftOutListing {
    private static final int MOST_WORDS_NAMED = 8;

    private LeftOutListing() {}

    /** A line for each reason. */
    static List<String> lines(List<LeftOut> leftOut) {
        Map<LeftOut.Reason, Map<String, Long>> byReason = leftOut.stream()
                .collect(Collectors.groupingBy(
                        LeftOut::reason,
                        LinkedHashMap::new,
                        Collectors.groupingBy(LeftOut::words, LinkedHashMap::new, Collectors.counting())));
        List<String> lines = new ArrayList<>();
        byReason.forEach((reason, words) -> {
            long all = words.values().stream().mapToLong(count -> count).sum();
            lines.add(all + " because " + reason.phrase() + ": " + mostOften(words));
        });
        return lines;
    }

    /** Those whose count is danced within a piece of the song, its end left out. */
    static List<LeftOut> within(List<LeftOut> leftOut, Timeline timeline, double fromSeconds, double toSeconds) {
        Map<List<Object>, Double> seconds = new LinkedHashMap<>();
        for (DancedCount count : timeline.counts()) {
            int wall = count.run().wall();
            String section = count.section().name();
            seconds.putIfAbsent(List.of(wall, section), count.songSeconds());
            seconds.putIfAbsent(List.of(wall, section, count.count().label()), count.songSeconds());
        }
        double start = timeline.grid().secondsAt(timeline.countOne());
        return leftOut.stream()
                .filter(out -> {
                    double section = seconds.getOrDefault(List.of(out.wall(), out.section()), start);
                    double at = seconds.getOrDefault(List.of(out.wall(), out.section(), out.count()), section);
                    return at >= fromSeconds && at < toSeconds;
                })
                .toList();
    }

    /** The words, each once with its places: {@code side (S2 count 4, S3 count 6), cross (S3 count 8)}. */
    static String withPlaces(List<LeftOut> leftOut) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        for (LeftOut out : leftOut) {
            String place = out.section().isEmpty() ? "count-in" : out.section() + " count " + out.count();
            places.computeIfAbsent(out.words(), words -> new LinkedHashSet<>()).add(place);
        }
        return places.entrySet().stream()
                .map(entry -> entry.getKey() + " (" + String.join(", ", entry.getValue()) + ")")
                .collect(Collectors.joining(", "));
    }

    private static String mostOften(Map<String, Long> words) {
        String named = words.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(MOST_WORDS_NAMED)
                .map(entry -> entry.getKey() + (entry.getValue() > 1 ? " (" + entry.getValue() + ")" : ""))
                .collect(Collectors.joining(", "));
        return words.size() > MOST_WORDS_NAMED ? named + ", and others" : named;
    }
}
