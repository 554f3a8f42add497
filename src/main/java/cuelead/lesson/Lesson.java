package cuelead.lesson;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What is walked through, pass by pass.
 *
 * @param passes never empty
 * @param danced which of them, numbered from 1, in the order in which they are danced; never empty
 */
public record Lesson(List<Pass> passes, List<Integer> danced) {
    public Lesson {
        passes = List.copyOf(passes);
        danced = List.copyOf(danced);
        if (danced.isEmpty()) {
            throw new IllegalArgumentException("a lesson without a pass");
        }
        for (int number : danced) {
            if (number < 1 || number > passes.size()) {
                throw new IllegalArgumentException("pass " + number + " of " + passes.size());
            }
        }
    }

    /** All passes, one after the other. */
    public Lesson(List<Pass> passes) {
        this(passes, IntStream.rangeClosed(1, passes.size()).boxed().toList());
    }

    /** The same passes, of which only some are danced. */
    public Lesson only(List<Integer> numbers) {
        return new Lesson(passes, numbers);
    }

    public boolean isWhole() {
        return equals(new Lesson(passes));
    }

    /**
     * One of its passes.
     *
     * @param number from 1
     */
    public Pass pass(int number) {
        return passes.get(number - 1);
    }

    /** The passes that are danced, in their order. */
    public List<Pass> dancedPasses() {
        return danced.stream().map(this::pass).toList();
    }
}
