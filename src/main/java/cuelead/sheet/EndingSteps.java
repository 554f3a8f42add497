package cuelead.sheet;

import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The steps of an ending that stand in the sentence that tells of it: "on wall 9 dance to count 14, then step R forward,
 * pivot 1/2 L and pose!". Of the pieces that are understood whole the first is taken, as far as it goes; what tells of walls
 * and counts is none.
 */
final class EndingSteps {
    private static final Set<String> TELLING = Set.of(
            "wall", "walls", "count", "counts", "music", "song", "track", "dance", "section", "facing", "face", "which",
            "brings", "bring", "puts", "takes");
    private static final String STOPS = ":;,.!-\u2013\u2014()";
    /** Of a sentence; a longer one is told, not danced. */
    private static final int MOST_WORDS = 40;

    private static final int MOST_ENDS = 8;
    /** Counts. */
    private static final int LONGEST = 16;

    private EndingSteps() {}

    /** The steps alone at their own columns, with counts before them. */
    static Optional<SheetLine> in(SheetLine told) {
        Optional<ReplacedSteps> replaced = ReplacedSteps.in(told.text());
        if (replaced.filter(steps -> !steps.areParted(told.text())).isPresent()) {
            return Optional.empty();
        }
        SheetLine line = FacingWords.without(
                replaced.map(steps -> blank(told, steps.from(), steps.to())).orElse(told));
        String text = line.text();
        List<Integer> ends = ends(text);
        List<Integer> telling = telling(line);
        for (int start : starts(line)) {
            int limit = telling.stream().filter(at -> at >= start).findFirst().orElse(text.length());
            for (int end : ends) {
                String steps = end > start && end <= limit ? text.substring(start, end) : "";
                Optional<SheetLine> counted =
                        areSteps(steps) ? Optional.of(counted(line, start, steps)) : Optional.empty();
                if (counted.filter(EndingSteps::isRightAsItIs).isPresent()) {
                    return counted.map(EndingSteps::withoutClocks);
                }
            }
        }
        return Optional.empty();
    }

    private static SheetLine blank(SheetLine line, int from, int to) {
        return line.with(from, to, " ".repeat(to - from));
    }

    /** 0-based indices where a word or a number begins. */
    private static List<Integer> starts(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD) || token.is(Token.Kind.NUMBER))
                .skip(1)
                .limit(MOST_WORDS)
                .map(token -> token.column() - 1)
                .toList();
    }

    /** 0-based indices where a sentence or a piece of it ends, the last first. */
    private static List<Integer> ends(String text) {
        List<Integer> ends = new ArrayList<>(List.of(text.length()));
        for (int i = text.length() - 1; i > 0 && ends.size() < MOST_ENDS; i--) {
            boolean inNumber =
                    i + 1 < text.length() && Scanner.isDigit(text.charAt(i - 1)) && Scanner.isDigit(text.charAt(i + 1));
            boolean isAnd = text.startsWith(" and ", i);
            if (isAnd || (STOPS.indexOf(text.charAt(i)) >= 0 && !inNumber)) {
                ends.add(i);
            }
        }
        return ends;
    }

    /** 0-based indices of the words that tell of walls and counts. */
    private static List<Integer> telling(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD) && TELLING.contains(token.text()))
                .map(token -> token.column() - 1)
                .toList();
    }

    private static boolean areSteps(String text) {
        return isBalanced(text) && DanceLine.mayBeDanced(new SheetLine(1, text)) && isUnderstood(text);
    }

    /** Whether nothing would be told of it: a mistake in a sentence may as well be one of its reader. */
    private static boolean isRightAsItIs(SheetLine counted) {
        Problems found = new Problems("ending");
        return CountGroup.read(counted.text())
                .map(group -> new LineReader(found, new Footing(Weight.UNKNOWN)).read(counted, group, group.counts()))
                .filter(read -> read.understood() && !read.doubtful())
                .filter(read -> found.all().isEmpty())
                .isPresent();
    }

    private static boolean isBalanced(String text) {
        return text.chars().filter(c -> c == '(').count()
                == text.chars().filter(c -> c == ')').count();
    }

    private static boolean isUnderstood(String text) {
        return CountGroup.read(text)
                .map(group -> group.counts().get(0).number() <= 1 && new LineFit().fits(text))
                .orElseGet(() -> LineFit.areReadable(LineFit.phrases(text)));
    }

    private static SheetLine counted(SheetLine line, int start, String steps) {
        boolean isCounted = CountGroup.read(steps).isPresent();
        String counts = isCounted ? "" : counts(steps) + " ";
        String before = " ".repeat(Math.max(0, start - counts.length()));
        return new SheetLine(line.number(), before + counts + steps);
    }

    /** Where the dancers face there is a claim about the ending, and no mark among its steps. */
    private static SheetLine withoutClocks(SheetLine steps) {
        String text = CLOCK.matcher(steps.text())
                .replaceAll(clock -> " ".repeat(clock.group().length()));
        return new SheetLine(steps.number(), text);
    }

    private static final Pattern CLOCK = Pattern.compile("\\d{1,2}[:.]\\d\\d");

    /** The fewest whole counts that the steps fill as they are; else what their figures take by themselves. */
    private static String counts(String steps) {
        LineFit fit = new LineFit();
        String best = UsualCounts.of(LineFit.phrases(steps), 1);
        if (best.matches(".*[&a,].*") && fit.fits(best + " " + steps)) {
            return best;
        }
        int leastCost = fit.cost(best + " " + steps);
        for (int last = LONGEST; last >= 1; last--) {
            String counts = last == 1 ? "1" : "1-" + last;
            int cost = fit.cost(counts + " " + steps);
            if (cost <= leastCost) {
                best = counts;
                leastCost = cost;
            }
        }
        return best;
    }
}
