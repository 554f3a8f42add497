package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Direction;
import cuelead.dance.Metre;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which steps of a section stand on one line when it is written, and the counts before them. */
final class WrittenCounts {
    private final int countsOfLine;

    /** Two whole counts a line, three in a waltz. */
    WrittenCounts(Metre metre) {
        countsOfLine = metre == Metre.SIXES ? 3 : 2;
    }

    /**
     * Steps that are told by one phrase: an action and how it goes on, or holds that stand for words.
     *
     * @param unread the words that stand there instead, where they were not understood
     */
    record Run(List<Step> steps, Optional<Unread> unread) {
        Count first() {
            return steps.get(0).count();
        }

        Count last() {
            return steps.get(steps.size() - 1).count();
        }

        /** Words that take several counts have a line of their own, so that it is plain which counts they take. */
        boolean standsAlone() {
            return unread.isPresent() && steps.size() > 1;
        }
    }

    /** Those of a section; {@code unread} are the words in it that were not understood. */
    static List<Run> runs(List<Step> steps, List<Unread> unread) {
        List<Run> runs = new ArrayList<>();
        int from = 0;
        while (from < steps.size()) {
            Count count = steps.get(from).count();
            Optional<Unread> words = unread.stream()
                    .filter(each -> each.actions() > 0 && each.at().equals(count))
                    .findFirst();
            int end = Math.min(steps.size(), from + words.map(Unread::actions).orElse(1));
            while (words.isEmpty() && end < steps.size() && steps.get(end).direction() == Direction.CONT) {
                end++;
            }
            runs.add(new Run(steps.subList(from, end), words));
            from = end;
        }
        return runs;
    }

    /** So many whole counts a line, with what lies between them and before them. */
    List<List<Run>> lines(List<Run> runs) {
        List<List<Run>> lines = new ArrayList<>();
        for (Run run : runs) {
            if (lines.isEmpty() || !goesOn(lines.get(lines.size() - 1), run)) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(run);
        }
        return lines;
    }

    private boolean goesOn(List<Run> open, Run run) {
        Run last = open.get(open.size() - 1);
        boolean follows = run.first().number() - last.last().number() <= 1;
        boolean room = run.first().number() <= lastOf(open);
        boolean pickup = steps(open).stream().noneMatch(each -> each.count().isWhole());
        return pickup || (follows && room && !run.standsAlone() && !last.standsAlone());
    }

    private int lastOf(List<Run> line) {
        int first = Math.max(1, line.get(0).first().number());
        return (first + countsOfLine - 1) / countsOfLine * countsOfLine;
    }

    static List<Step> steps(List<Run> line) {
        return line.stream().flatMap(run -> run.steps().stream()).toList();
    }

    /** "1-2", "3&4", "&5-6", "1a2"; "1-4" before words that take them all. */
    static String labels(List<Run> line) {
        List<Step> steps = steps(line);
        if (line.get(0).standsAlone()
                && steps.stream().allMatch(step -> step.count().isWhole())) {
            return line.get(0).first().number() + "-" + line.get(0).last().number();
        }
        StringBuilder labels = new StringBuilder();
        for (Step step : steps) {
            Count count = step.count();
            boolean leads = labels.isEmpty() && !count.isWhole() && count.number() > 0 && steps.size() > 1;
            if (count.isWhole() || (labels.isEmpty() && !leads && count.number() > 0)) {
                boolean joined = !labels.isEmpty() && Character.isDigit(labels.charAt(labels.length() - 1));
                labels.append(joined ? "-" : "").append(count.number());
            }
            labels.append(count.split().mark());
        }
        return labels.toString();
    }
}
