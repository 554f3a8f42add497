package cuelead.rehearse;

import java.util.Set;

/**
 * One thing to work on.
 *
 * @param calls  those that show it; empty where it is of all calls
 * @param weight how many calls it spoils, more or less
 */
public record Finding(Rank rank, String sentence, Set<ReviewedCall> calls, double weight) {
    /** What is worked on first comes first. */
    public enum Rank {
        /** It happens at the same place, or in the same way, time after time. */
        TREND,
        /** It happens often, here and there. */
        OFTEN,
        /** It may have been a slip. */
        ONCE
    }

    public Finding {
        calls = Set.copyOf(calls);
    }

    /** {@code both times}, {@code all 3 times}, {@code 5 of 6 times}. */
    static String howOften(long count, long all) {
        if (count < all) {
            return count + " of " + all + " times";
        }
        return all == 1 ? "once" : all == 2 ? "both times" : "all " + all + " times";
    }
}
