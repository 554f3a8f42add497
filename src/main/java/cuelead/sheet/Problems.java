package cuelead.sheet;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of one sheet while it is read. */
final class Problems {
    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();

    /** For reading on trial, of which nobody is told. */
    static Problems unheard() {
        return new Problems("");
    }

    boolean isUnheard() {
        return file.isEmpty();
    }

    Problems(String file) {
        this.file = file;
    }

    void error(String kind, int line, int column, String sentence, String tryThis) {
        add(new Problem(Severity.ERROR, kind, file, line, column, sentence, tryThis));
    }

    void warning(String kind, int line, int column, String sentence, String tryThis) {
        add(new Problem(Severity.WARNING, kind, file, line, column, sentence, tryThis));
    }

    /** Something to know that is no mistake. */
    void note(String kind, int line, int column, String sentence, String tryThis) {
        add(new Problem(Severity.NOTE, kind, file, line, column, sentence, tryThis));
    }

    /** What is told twice is told once. */
    private void add(Problem problem) {
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    /** How much was not understood. */
    enum Extent {
        /** One action of a line. */
        ACTION,
        /** All that stands behind the counts of a line. */
        LINE,
        /** A line that is not danced at all. */
        LEFT_OUT
    }

    /**
     * Words that were not understood.
     *
     * @param line the line, as it is read
     * @param from 1-based column
     * @param to   1-based column behind them, or beyond the line's end
     */
    record Span(int line, int from, int to, Extent extent) {
        /** A whole line. */
        static Span of(int line, Extent extent) {
            return new Span(line, 1, Integer.MAX_VALUE, extent);
        }
    }

    void unread(Span span) {
        spans.add(span);
    }

    /** In the order in which they were read. */
    List<Span> unread() {
        return spans;
    }

    boolean has(String kind) {
        return found.stream().anyMatch(problem -> problem.kind().equals(kind));
    }

    /** In the order of the sheet. */
    List<Problem> all() {
        return all(new Origins(List.of()));
    }

    /** At their places in the sheet as it was written, in its order. */
    List<Problem> all(Origins origins) {
        return Floods.eased(found.stream()
                .map(origins::of)
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList());
    }
}
