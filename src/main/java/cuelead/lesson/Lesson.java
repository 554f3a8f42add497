package cuelead.lesson;

import java.util.List;

/** What is walked through, pass by pass. Never empty. */
public record Lesson(List<Pass> passes) {
    public Lesson {
        passes = List.copyOf(passes);
        if (passes.isEmpty()) {
            throw new IllegalArgumentException("a lesson without a pass");
        }
    }
}
