package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Direction;
import cuelead.dance.Metre;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.List;

/** Which steps of a section stand on one line when it is written, and the counts before them. */
final class WrittenCounts {
    private final int countsOfLine;

    /** Two whole counts a line, three in a waltz. */
    WrittenCounts(Metre metre) {
        countsOfLine = metre == Metre.SIXES ? 3 : 2;
    }

    /** So many whole counts a line, with what lies between them and before them. */
    List<List<Step>> lines(List<Step> steps) {
        List<List<Step>> lines = new ArrayList<>();
        for (Step step : steps) {
            if (lines.isEmpty() || !goesOn(lines.get(lines.size() - 1), step)) {
                lines.add(new ArrayList<>());
            }
            lines.get(lines.size() - 1).add(step);
        }
        return lines;
    }

    private boolean goesOn(List<Step> open, Step step) {
        Count last = open.get(open.size() - 1).count();
        boolean follows = step.count().number() - last.number() <= 1;
        boolean room = step.count().number() <= lastOf(open);
        boolean pickup = open.stream().noneMatch(each -> each.count().isWhole());
        return pickup || step.direction() == Direction.CONT || (follows && room);
    }

    private int lastOf(List<Step> line) {
        int first = Math.max(1, line.get(0).count().number());
        return (first + countsOfLine - 1) / countsOfLine * countsOfLine;
    }

    /** "1-2", "3&4", "&5-6", "1a2". */
    static String labels(List<Step> line) {
        StringBuilder labels = new StringBuilder();
        for (Step step : line) {
            Count count = step.count();
            boolean leads = labels.isEmpty() && !count.isWhole() && count.number() > 0 && line.size() > 1;
            if (count.isWhole() || (labels.isEmpty() && !leads && count.number() > 0)) {
                boolean joined = !labels.isEmpty() && Character.isDigit(labels.charAt(labels.length() - 1));
                labels.append(joined ? "-" : "").append(count.number());
            }
            labels.append(count.split().mark());
        }
        return labels.toString();
    }
}
