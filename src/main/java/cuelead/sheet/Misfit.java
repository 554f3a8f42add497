package cuelead.sheet;

import java.util.List;
import java.util.stream.IntStream;

/** Reports a line whose actions do not fill its counts, and names the figure that is the cause where there is one. */
final class Misfit {
    /** Characters of the sheet that are repeated in a sentence. */
    private static final int LONGEST_QUOTE = 40;

    private final Problems problems;
    private final SheetLine line;
    private final CountGroup group;

    Misfit(Problems problems, SheetLine line, CountGroup group) {
        this.problems = problems;
        this.line = line;
        this.group = group;
    }

    void report(List<Phrase> phrases, int counts) {
        problems.unread(Problems.Span.of(line.number(), Problems.Extent.LINE));
        String written = "\"" + group.written(line.text()) + "\"";
        if (phrases.isEmpty()) {
            error("no_action", "Nothing is danced on " + group.written(line.text()) + ".", HOLD);
            return;
        }
        boolean quick = group.counts().stream().anyMatch(count -> !count.isWhole());
        int total = IntStream.range(0, phrases.size())
                .filter(i -> !quick || !Fitting.turnsInto(phrases, i))
                .map(i -> Fitting.usual(phrases.get(i)))
                .sum();
        error(
                "incomplete_figure",
                written + " counts " + number(counts) + ", but " + number(total) + (total == 1 ? " is" : " are")
                        + " written" + causes(phrases) + ".",
                total > counts ? tooMany(phrases) : HOLD);
    }

    private static final String HOLD = "Write what is danced on every count, if only \"hold\".";

    /** ": "Monterey 1/2 turn" counts as 4 actions, "shuffle forward" as 3" */
    private String causes(List<Phrase> phrases) {
        StringBuilder causes = new StringBuilder();
        for (int i = 0; i < phrases.size(); i++) {
            int size = Fitting.usual(phrases.get(i));
            if (phrases.get(i).figure().isPresent() && size > 1) {
                int end = i + 1 < phrases.size()
                        ? phrases.get(i + 1).column() - 1
                        : line.text().length();
                causes.append(causes.isEmpty() ? ": \"" : ", \"")
                        .append(words(phrases.get(i).column() - 1, end))
                        .append(causes.indexOf("counts as") < 0 ? "\" counts as " + number(size) : "\" as " + size);
            }
        }
        return causes.toString();
    }

    /** A phrase as it is written, without what parts it from the next. */
    private String words(int from, int end) {
        int stop = from;
        int limit = Math.min(end, from + LONGEST_QUOTE);
        while (stop < limit && ",;([\"".indexOf(line.text().charAt(stop)) < 0) {
            stop++;
        }
        return line.text().substring(from, stop).replaceAll("\\s*(&|\\band|\\bthen|[-.:])?\\s*$", "");
    }

    private String tooMany(List<Phrase> phrases) {
        if (phrases.size() > 1 || phrases.get(0).figure().isEmpty()) {
            return "Add the counts that are missing (three steps in two counts are 1&2), or a line.";
        }
        return "Write it on \""
                + UsualCounts.of(phrases, Math.max(1, group.counts().get(0).number()))
                + "\", or write out what is danced.";
    }

    private static String number(int actions) {
        return actions + (actions == 1 ? " action" : " actions");
    }

    private void error(String kind, String sentence, String tryThis) {
        problems.error(kind, line.number(), group.column(), sentence, tryThis);
    }
}
