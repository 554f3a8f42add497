package cuelead.lesson;

import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a lesson's text to its end, whatever is wrong in it. */
public final class LessonReader {
    private final String file;
    private final Timeline timeline;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * A lesson for a dance.
     *
     * @param file     as the user named it, for problems
     * @param timeline the dance at full speed, over its music where it has any
     */
    public LessonReader(String file, Timeline timeline) {
        this.file = file;
        this.timeline = timeline;
    }

    /**
     * What was read.
     *
     * @param lesson   empty when there is an error among the problems
     * @param problems all mistakes, in the order of the lines
     */
    public record Reading(Optional<Lesson> lesson, List<Problem> problems) {
        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /** Reads a text; {@code #} begins a comment. */
    public Reading read(String text) {
        List<Pass> passes = new ArrayList<>();
        PassParser parser = new PassParser(timeline);
        int number = 0;
        for (String line : text.split("\\R", -1)) {
            number++;
            String written = line.replaceFirst("#.*", "").replace('\uFEFF', ' ');
            if (written.isBlank()) {
                continue;
            }
            try {
                passes.add(parser.parse(written));
            } catch (LessonMistake mistake) {
                add(number, mistake.column(), mistake.sentence(), mistake.tryThis());
            }
        }
        if (passes.isEmpty() && problems.isEmpty()) {
            add(0, 0, "This lesson has no pass.", "Write one a line, such as \"section 1, walk, 3 times, clicks\".");
        }
        return new Reading(problems.isEmpty() ? Optional.of(new Lesson(passes)) : Optional.empty(), problems);
    }

    private void add(int line, int column, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, "lesson", file, line, column, sentence, tryThis));
    }
}
