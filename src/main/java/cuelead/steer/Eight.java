package cuelead.steer;

import cuelead.dance.Count;
import cuelead.plan.DancedCount;
import cuelead.plan.Timeline;
import java.util.ArrayList;
import java.util.List;

/**
 * The counts of a section and which of them is danced.
 *
 * @param counts as they are said: {@code 1}, {@code 2}, {@code &}
 * @param now    index of the one that is danced
 */
public record Eight(List<String> counts, int now) {
    private static final Eight NONE = new Eight(List.of(), -1);

    public Eight {
        counts = List.copyOf(counts);
    }

    /** Those of a count's section, as far as they are danced before the wall is broken off. */
    static Eight around(Timeline timeline, DancedCount danced) {
        int sectionStart = danced.countInRun() - danced.count().number();
        List<DancedCount> section = timeline.countsOf(danced.run()).stream()
                .filter(count -> count.section().equals(danced.section()))
                .filter(count -> count.countInRun() - count.count().number() == sectionStart)
                .toList();
        return new Eight(section.stream().map(count -> label(count.count())).toList(), section.indexOf(danced));
    }

    /**
     * Before the dance: the counts that lead to its first.
     *
     * @param counts how many are left, the one that sounds included
     */
    static Eight before(int counts, int inSection) {
        if (counts < 1) {
            return NONE;
        }
        List<String> labels = new ArrayList<>();
        for (int count = 1; count <= inSection; count++) {
            labels.add(Integer.toString(count));
        }
        return new Eight(labels, inSection - 1 - (counts - 1) % inSection);
    }

    static Eight none() {
        return NONE;
    }

    private static String label(Count count) {
        return count.isWhole()
                ? Integer.toString(count.number())
                : count.split().mark();
    }
}
