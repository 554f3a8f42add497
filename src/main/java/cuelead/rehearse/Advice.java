package cuelead.rehearse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is worth working on, in a teacher's words. What goes wrong time after time comes before what goes wrong here and
 * there, and a single slip last; what the same calls show is said once.
 */
public final class Advice {
    /** A finding that says so much of what was said before says nothing new. */
    private static final double SAID_PART = 0.6;

    private static final Comparator<Finding> WEIGHTIEST_FIRST = Comparator.comparing(Finding::rank)
            .thenComparing(Comparator.comparingDouble(Finding::weight).reversed());

    private Advice() {}

    /** All that can be said, the weightiest first. */
    public static List<Finding> on(Review review) {
        List<Finding> all = new ArrayList<>(new TimingTrends(review).find());
        all.addAll(new WordTrends(review).find());
        all.sort(WEIGHTIEST_FIRST);
        List<Finding> told = new ArrayList<>();
        Set<ReviewedCall> said = new HashSet<>();
        for (Finding finding : all) {
            long again = finding.calls().stream().filter(said::contains).count();
            if (again == 0 || again < SAID_PART * finding.calls().size()) {
                told.add(finding);
                said.addAll(finding.calls());
            }
        }
        return told;
    }
}
