package cuelead.rehearse;

import cuelead.rehearse.Finding.Rank;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Words that are left out or taken for others, and words that no step needs. */
final class WordTrends {
    private static final int SOME = 3;
    /** What goes wrong so often of all times is no slip. */
    private static final double TREND_PART = 0.3;

    private final Review review;
    private final List<Finding> findings = new ArrayList<>();

    WordTrends(Review review) {
        this.review = review;
    }

    /** Each once; used once. */
    List<Finding> find() {
        byWord(CallKind.MISSED).forEach((word, calls) -> {
            if (calls.size() > 1) {
                add(
                        "\"" + word + "\" was left out " + howOften(word, calls) + ": say it aloud with the steps.",
                        word,
                        calls);
            }
        });
        byWord(CallKind.WRONG).forEach((word, calls) -> {
            String others = calls.stream()
                    .map(call -> "\"" + call.heard().orElseThrow().word() + "\"")
                    .distinct()
                    .collect(Collectors.joining(", "));
            add(
                    "For \"" + word + "\" you said " + others + ", " + howOften(word, calls)
                            + ": learn that place by heart.",
                    word,
                    calls);
        });
        addMany(
                CallKind.MISSED,
                " calls were left out: breathe earlier, and call fewer words where time is short.",
                0.9);
        addMany(CallKind.EXTRA, " words were said that no step needs: they hide the calls around them.", 0.6);
        return findings;
    }

    private Map<String, List<ReviewedCall>> byWord(CallKind kind) {
        return review.calls().stream()
                .filter(call -> call.kind() == kind)
                .collect(Collectors.groupingBy(
                        call -> call.planned().orElseThrow().word(), LinkedHashMap::new, Collectors.toList()));
    }

    private long planned(String word) {
        return review.calls().stream()
                .flatMap(call -> call.planned().stream())
                .filter(call -> call.word().equals(word))
                .count();
    }

    private String howOften(String word, List<ReviewedCall> calls) {
        return Finding.howOften(calls.size(), planned(word));
    }

    private void add(String sentence, String word, List<ReviewedCall> calls) {
        boolean isTrend = calls.size() >= TREND_PART * planned(word);
        Rank rank = calls.size() == 1 ? Rank.ONCE : isTrend ? Rank.TREND : Rank.OFTEN;
        findings.add(new Finding(rank, sentence, Set.copyOf(calls), calls.size()));
    }

    private void addMany(CallKind kind, String what, double weight) {
        List<ReviewedCall> calls =
                review.calls().stream().filter(call -> call.kind() == kind).toList();
        if (calls.size() >= SOME) {
            findings.add(new Finding(Rank.OFTEN, calls.size() + what, Set.copyOf(calls), weight * calls.size()));
        }
    }
}
