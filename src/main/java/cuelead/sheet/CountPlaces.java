package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the counts of a line wherever its author puts them: before the steps, between them ("(1) step R (2) touch L",
 * "1-2 rock R, recover 3&4 shuffle back"), or behind them ("rock R, recover (1-2), shuffle back (3&4)").
 */
final class CountPlaces {
    private final String line;
    private final List<FoundCounts> found;

    private CountPlaces(String line, int lastCount) {
        this.line = line;
        this.found = CountFinder.in(line, lastCount);
    }

    /**
     * Counts, and where their steps stand, as 0-based indices.
     *
     * @param tail where a remark begins that stands behind the counts at the end of the line; its length without one
     */
    record Counted(CountGroup group, int from, int to, int tail) {}

    /** In the order of the line; empty where it has no counts. {@code lastCount} is the one before the line. */
    static List<Counted> of(String line, int lastCount) {
        CountPlaces places = new CountPlaces(line, lastCount);
        List<Counted> before = places.before();
        if (!before.isEmpty()) {
            return before;
        }
        List<Counted> behind = places.behind(lastCount);
        return behind.isEmpty() ? places.within(lastCount) : behind;
    }

    /** The line begins with counts; those that go on from them within it part it further. */
    private List<Counted> before() {
        if (found.isEmpty() || !line.substring(0, found.get(0).from()).isBlank() || isLone(found.get(0))) {
            return List.of();
        }
        List<FoundCounts> chain = new ArrayList<>(List.of(found.get(0)));
        boolean runs = runsThrough();
        for (FoundCounts next : found.subList(1, found.size())) {
            FoundCounts last = chain.get(chain.size() - 1);
            boolean between = standsBetween(next) || (runs && isBeforeWords(next));
            if ((next.follows(last) || next.leavesOut(last)) && between) {
                chain.add(next);
            }
        }
        List<Counted> counted = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            int to = i + 1 < chain.size() ? chain.get(i + 1).from() : line.length();
            int start = Math.min(to, skipColon(chain.get(i).to()));
            counted.add(new Counted(chain.get(i).group(), start, to, line.length()));
        }
        return counted;
    }

    private boolean isLone(FoundCounts each) {
        return each.group().isLoneAnd(line);
    }

    /** "1 step R 2 scuff L 3 step L": so many counts in their order are no accident, though nothing parts them. */
    private boolean runsThrough() {
        int number = found.get(0).last().number();
        int following = 0;
        for (FoundCounts next : found.subList(1, found.size())) {
            if (next.first().isWhole() && next.first().number() == number + 1) {
                number = next.last().number();
                following++;
            }
        }
        return following >= SHORTEST_RUN;
    }

    private static final int SHORTEST_RUN = 2;

    private boolean isBeforeWords(FoundCounts counts) {
        int after = skipColon(counts.to());
        return after < line.length() && (Character.isLetter(line.charAt(after)) || isFraction(after));
    }

    /** Words follow, and one count alone is parted from the words before it. */
    private boolean standsBetween(FoundCounts next) {
        int spaces = next.group().column() - 1 - Spaces.back(line, next.group().column() - 1);
        int before = Spaces.back(line, next.from()) - 1;
        boolean marked = before < 0 || ",;.:".indexOf(line.charAt(before)) >= 0;
        boolean parted = next.bracketed() || marked || spaces > 1 || (spaces > 0 && next.isMany());
        return isBeforeWords(next) && parted;
    }

    /** "[6] 1/4 turn left": a turn begins the steps. */
    private boolean isFraction(int at) {
        char c = line.charAt(at);
        boolean figures = Scanner.isDigit(c)
                && at + 2 < line.length()
                && line.charAt(at + 1) == '/'
                && Scanner.isDigit(line.charAt(at + 2));
        return figures || Character.getType(c) == Character.OTHER_NUMBER;
    }

    private int skipColon(int from) {
        int at = Spaces.forward(line, from);
        while (at < line.length() && ":.)-=".indexOf(line.charAt(at)) >= 0) {
            at = Spaces.forward(line, at + 1);
        }
        return at;
    }

    /** The line ends with counts, perhaps with a clock time behind them. */
    private List<Counted> behind(int lastCount) {
        if (found.isEmpty()) {
            return List.of();
        }
        FoundCounts end = found.get(found.size() - 1);
        if (!isEnd(end.to()) && !(end.bracketed() && isRemark(end.to()))) {
            return List.of();
        }
        List<FoundCounts> chain = new ArrayList<>(List.of(end));
        for (int i = found.size() - 2; i >= 0; i--) {
            boolean runsOn = chain.get(0).follows(found.get(i))
                    || (end.bracketed()
                            && found.get(i).bracketed()
                            && chain.get(0).leavesOut(found.get(i)));
            if (runsOn
                    && (found.get(i).bracketed()
                            || found.get(i).isMany()
                            || found.get(i).told(line))) {
                chain.add(0, found.get(i));
            }
        }
        boolean bracketed = chain.stream().allMatch(FoundCounts::bracketed);
        boolean told = chain.stream().allMatch(each -> each.told(line));
        boolean sure = chain.size() > 1 && (bracketed || told);
        if (!sure && !isPartedBehind(end, lastCount)) {
            return List.of();
        }
        List<Counted> counted = new ArrayList<>();
        int from = 0;
        for (FoundCounts each : chain) {
            counted.add(
                    new Counted(each.group(), from, each.from(), each.equals(end) ? tail(end.to()) : line.length()));
            from = each.to();
        }
        return counted;
    }

    /** A remark that turns is none of the dance's turns. */
    private int tail(int to) {
        String rest = line.substring(to);
        return DanceLine.movesNothing(rest) || Easier.isTold(rest) ? to : line.length();
    }

    /** What stands behind the last counts moves no foot: "(8) - you face 6 o'clock". */
    private boolean isRemark(int to) {
        return DanceLine.movesNoFoot(line.substring(to)) || Easier.isTold(line.substring(to));
    }

    private boolean isPartedBehind(FoundCounts end, int lastCount) {
        int before = end.from() - 1;
        boolean wide = before > 0
                && (line.charAt(before) == '\t'
                        || (Scanner.isSpace(line.charAt(before)) && Scanner.isSpace(line.charAt(before - 1))));
        int word = Spaces.back(line, end.from()) - 1;
        boolean marked = word >= 0 && ",;:-".indexOf(line.charAt(word)) >= 0;
        boolean told = end.from() < end.group().column() - 1 && !end.bracketed();
        int first = end.first().isWhole() ? end.first().number() : end.first().number() + 1;
        boolean expected = first == lastCount + 1 || first == 1;
        return (end.isMany() && (end.bracketed() || wide || marked || told || expected))
                || (expected && (end.bracketed() || wide || told));
    }

    private boolean isEnd(int to) {
        String rest = line.substring(to).strip();
        return rest.isEmpty() || rest.matches("[.,;)\\]]") || rest.matches("[\\[(]?\\d{1,2}[:.]\\d\\d[\\])]?\\.?");
    }

    /** Words, a colon, then counts: "Vine: 1-2 step R to side ... 3-4 ...". */
    private List<Counted> within(int lastCount) {
        for (int i = 0; i < found.size(); i++) {
            FoundCounts first = found.get(i);
            int number = first.first().number();
            boolean parted = Spaces.back(line, first.from()) > 0
                    && ":-.".indexOf(line.charAt(Spaces.back(line, first.from()) - 1)) >= 0;
            boolean begins = first.isMany() && (number <= 1 || number == lastCount + 1);
            if (begins && (parted || first.bracketed()) && standsBetween(first)) {
                CountPlaces rest = new CountPlaces(" ".repeat(first.from()) + line.substring(first.from()), lastCount);
                return rest.before();
            }
        }
        return List.of();
    }
}
