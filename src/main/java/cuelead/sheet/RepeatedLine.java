package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** "1-4 Rock R forward, recover L (x2)": a number of times behind the last action that is meant of the whole line. */
final class RepeatedLine {
    /** Each time a figure may leave its ending to what follows: "rock R forward, recover L". */
    private static final int AGAIN_COST = 1;

    private RepeatedLine() {}

    /** The phrases as they fill the counts best: as they stand, or all of them so many times. */
    static List<Phrase> of(List<Phrase> phrases, List<Count> counts) {
        int times = phrases.isEmpty() ? 1 : phrases.get(phrases.size() - 1).repeats();
        if (times < 2 || phrases.size() < 2) {
            return phrases;
        }
        List<Phrase> once = new ArrayList<>(phrases);
        once.set(once.size() - 1, once.get(once.size() - 1).repeated(1 - times));
        List<Phrase> repeated = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            repeated.addAll(once);
        }
        OptionalInt whole = cost(repeated, counts);
        OptionalInt last = cost(phrases, counts);
        boolean all = whole.isPresent() && (last.isEmpty() || whole.getAsInt() <= last.getAsInt() + times * AGAIN_COST);
        return all ? repeated : phrases;
    }

    private static OptionalInt cost(List<Phrase> phrases, List<Count> counts) {
        return Fitting.of(phrases, counts)
                .map(fit -> OptionalInt.of(fit.cost()))
                .orElse(OptionalInt.empty());
    }
}
