package cuelead.rehearse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which heard word belongs to which planned call: the cheapest way to turn the plan into what was heard by words that are
 * early or late, other words, missed and extra ones, in their order (the edit distance of Wagner and Fischer 1974, "The
 * string-to-string correction problem", J. ACM 21, with times).
 */
final class Matching {
    private static final double MISSED = 1;
    private static final double EXTRA = 1;
    private static final double OTHER_WORD = 0.75;
    /** A second costs so much. */
    private static final double COST_A_SECOND = 1.4;
    /** Further off, a word is not meant for that call. */
    private static final double FURTHEST_SECONDS = 0.75;
    /** Another word stands for a planned one only where it is near. */
    private static final double FURTHEST_OTHER_SECONDS = 0.4;

    private final List<PlannedCall> plan;
    private final List<HeardWord> heard;
    private final double roundTripSeconds;

    /**
     * @param plan  in order of time
     * @param heard in order of time
     */
    Matching(List<PlannedCall> plan, List<HeardWord> heard, double roundTripSeconds) {
        this.plan = plan;
        this.heard = heard;
        this.roundTripSeconds = roundTripSeconds;
    }

    /** All planned calls at their planned times, and what was extra among them. */
    List<ReviewedCall> calls() {
        double[][] cost = costs();
        List<ReviewedCall> calls = new ArrayList<>();
        int i = plan.size();
        int j = heard.size();
        while (i > 0 || j > 0) {
            if (i > 0 && j > 0 && cost[i][j] == cost[i - 1][j - 1] + both(i - 1, j - 1)) {
                i--;
                j--;
                calls.add(ReviewedCall.called(plan.get(i), heard.get(j), songSeconds(j)));
            } else if (i > 0 && cost[i][j] == cost[i - 1][j] + MISSED) {
                i--;
                calls.add(ReviewedCall.missed(plan.get(i)));
            } else {
                j--;
                calls.add(ReviewedCall.extra(heard.get(j), songSeconds(j)));
            }
        }
        calls.sort(Comparator.comparingDouble(ReviewedCall::seconds));
        return calls;
    }

    private double[][] costs() {
        double[][] cost = new double[plan.size() + 1][heard.size() + 1];
        for (int i = 0; i <= plan.size(); i++) {
            for (int j = 0; j <= heard.size(); j++) {
                double least = i == 0 && j == 0 ? 0 : Double.POSITIVE_INFINITY;
                if (i > 0) {
                    least = Math.min(least, cost[i - 1][j] + MISSED);
                }
                if (j > 0) {
                    least = Math.min(least, cost[i][j - 1] + EXTRA);
                }
                if (i > 0 && j > 0) {
                    least = Math.min(least, cost[i - 1][j - 1] + both(i - 1, j - 1));
                }
                cost[i][j] = least;
            }
        }
        return cost;
    }

    private double both(int planned, int said) {
        double off = Math.abs(songSeconds(said) - plan.get(planned).seconds());
        boolean isSame = plan.get(planned).word().equals(heard.get(said).word());
        if (off > (isSame ? FURTHEST_SECONDS : FURTHEST_OTHER_SECONDS)) {
            return Double.POSITIVE_INFINITY;
        }
        return COST_A_SECOND * off + (isSame ? 0 : OTHER_WORD);
    }

    private double songSeconds(int said) {
        return heard.get(said).centreSeconds() - roundTripSeconds;
    }
}
