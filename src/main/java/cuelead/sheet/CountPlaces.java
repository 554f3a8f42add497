package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the counts of a line wherever its author puts them: before the steps, between them ("(1) step R (2) touch L",
 * "1-2 rock R, recover 3&4 shuffle back"), or behind them ("rock R, recover (1-2), shuffle back (3&4)").
 */
final class CountPlaces {
    private static final Set<String> UNITS =
            Set.of("count", "counts", "ct", "cts", "beat", "beats", "on", "for", "from", "during");

    private static final int MOST_LEFT_OUT = 3;

    private final String line;
    private final List<Found> found = new ArrayList<>();

    private CountPlaces(String line) {
        this.line = line;
    }

    /**
     * Counts, and where their steps stand, as 0-based indices.
     *
     * @param tail where a remark begins that stands behind the counts at the end of the line; its length without one
     */
    record Counted(CountGroup group, int from, int to, int tail) {}

    /** A place where counts stand: from and to with their brackets and words such as "counts". */
    private record Found(CountGroup group, int from, int to, boolean bracketed) {
        Count first() {
            return group.counts().get(0);
        }

        Count last() {
            return group.counts().get(group.counts().size() - 1);
        }

        /** Whether these go on where those end. */
        boolean follows(Found before) {
            int number = before.last().number();
            boolean next = first().number() == number + 1 && first().isWhole();
            return next
                    || (first().number() == number
                            && !first().isWhole()
                            && before.last().isWhole());
        }

        /** Whether a count is left out between those and these, both being in brackets. */
        boolean leavesOut(Found before) {
            int left = first().number() - before.last().number();
            return bracketed && before.bracketed && left > 0 && left <= MOST_LEFT_OUT;
        }

        boolean isMany() {
            return group.counts().size() > 1;
        }
    }

    /** In the order of the line; empty where it has no counts. {@code lastCount} is the one before the line. */
    static List<Counted> of(String line, int lastCount) {
        CountPlaces places = new CountPlaces(line);
        places.find();
        places.number(lastCount);
        List<Counted> before = places.before();
        if (!before.isEmpty()) {
            return before;
        }
        List<Counted> behind = places.behind(lastCount);
        return behind.isEmpty() ? places.within(lastCount) : behind;
    }

    private void find() {
        int at = 0;
        while (at < line.length()) {
            int next = at + 1;
            int from = at;
            if (mayBegin(at)) {
                Optional<CountGroup> group = CountGroup.read(line, at)
                        .filter(counts -> isPlain(counts))
                        .or(() -> loneAnd(from));
                if (group.isPresent() && group.get().column() - 1 == at) {
                    found.add(found(group.get()));
                    next = group.get().end();
                }
            }
            at = next;
        }
    }

    /** "(&)": it takes its number from the counts beside it. */
    private Optional<CountGroup> loneAnd(int at) {
        boolean and = line.charAt(at) == '&' || line.charAt(at) == 'a';
        int opened = at > 0 ? "([".indexOf(line.charAt(at - 1)) : -1;
        boolean bracketed = opened >= 0 && at + 1 < line.length() && line.charAt(at + 1) == ")]".charAt(opened);
        if (!and || !bracketed) {
            return Optional.empty();
        }
        Count.Split split = line.charAt(at) == '&' ? Count.Split.AND : Count.Split.A;
        return Optional.of(new CountGroup(List.of(new Count(0, split)), at + 1, at + 1));
    }

    private void number(int lastCount) {
        for (int i = 0; i < found.size(); i++) {
            Found each = found.get(i);
            boolean lone = each.group().isLoneAnd(line);
            if (lone) {
                int before = i > 0 ? found.get(i - 1).last().number() : lastCount;
                boolean leads =
                        i == 0 && found.size() > 1 && !found.get(1).group().isLoneAnd(line);
                int number = leads ? found.get(1).first().number() - 1 : before;
                Count count = new Count(Math.max(0, number), each.first().split());
                CountGroup group = new CountGroup(
                        List.of(count), each.group().column(), each.group().end());
                found.set(i, new Found(group, each.from(), each.to(), each.bracketed()));
            }
        }
    }

    /** Not "turn 1/4" nor "12:00", which the counts know; not "x 2", "wall 3", "section 1". */
    private boolean isPlain(CountGroup group) {
        String word = wordBefore(group.column() - 1);
        boolean named = !word.isEmpty() && !UNITS.contains(word);
        return !named
                || group.counts().size() > 1
                || !Set.of("x", "wall", "walls", "section", "sec", "set", "part", "tag", "s", "to", "step", "no")
                        .contains(word);
    }

    private boolean mayBegin(int at) {
        char c = line.charAt(at);
        boolean pickupA = (c == 'a' || c == 'A') && at + 1 < line.length() && Scanner.isDigit(line.charAt(at + 1));
        boolean loneA = c == 'a' && at > 0 && "([".indexOf(line.charAt(at - 1)) >= 0;
        boolean starts = Scanner.isDigit(c) || c == '&' || pickupA || loneA;
        return starts
                && (at == 0 || Scanner.isSpace(line.charAt(at - 1)) || "([,;.:".indexOf(line.charAt(at - 1)) >= 0);
    }

    private Found found(CountGroup group) {
        int from = back(group.column() - 1);
        int to = group.end();
        boolean opened = from > 0 && "([".indexOf(line.charAt(from - 1)) >= 0;
        int close = forward(to);
        boolean closed = close < line.length() && ")]".indexOf(line.charAt(close)) >= 0;
        boolean bracketed = opened && closed;
        from = bracketed ? back(from - 1) : from;
        to = bracketed ? close + 1 : to;
        String word = wordBefore(from);
        while (UNITS.contains(word)) {
            from = wordStart(from);
            word = wordBefore(from);
        }
        boolean opens =
                !bracketed && from > 0 && "([".indexOf(line.charAt(back(from) - 1 < 0 ? 0 : back(from) - 1)) >= 0;
        if (opens && closed) {
            return new Found(group, back(from) - 1, close + 1, true);
        }
        return new Found(group, from, to, bracketed);
    }

    /** The line begins with counts; those that go on from them within it part it further. */
    private List<Counted> before() {
        if (found.isEmpty() || !line.substring(0, found.get(0).from()).isBlank() || isLone(found.get(0))) {
            return List.of();
        }
        List<Found> chain = new ArrayList<>(List.of(found.get(0)));
        for (Found next : found.subList(1, found.size())) {
            Found last = chain.get(chain.size() - 1);
            if ((next.follows(last) || next.leavesOut(last)) && standsBetween(next)) {
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

    private boolean isLone(Found each) {
        return each.group().isLoneAnd(line);
    }

    /** Words follow, and one count alone is parted from the words before it. */
    private boolean standsBetween(Found next) {
        int after = skipColon(next.to());
        boolean words = after < line.length() && (Character.isLetter(line.charAt(after)) || isFraction(after));
        int spaces = next.group().column() - 1 - back(next.group().column() - 1);
        int before = back(next.from()) - 1;
        boolean marked = before < 0 || ",;.:".indexOf(line.charAt(before)) >= 0;
        boolean parted = next.bracketed() || marked || spaces > 1 || (spaces > 0 && next.isMany());
        return words && parted;
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
        int at = forward(from);
        while (at < line.length() && ":.)-=".indexOf(line.charAt(at)) >= 0) {
            at = forward(at + 1);
        }
        return at;
    }

    /** The line ends with counts, perhaps with a clock time behind them. */
    private List<Counted> behind(int lastCount) {
        if (found.isEmpty()) {
            return List.of();
        }
        Found end = found.get(found.size() - 1);
        if (!isEnd(end.to()) && !(end.bracketed() && isRemark(end.to()))) {
            return List.of();
        }
        List<Found> chain = new ArrayList<>(List.of(end));
        for (int i = found.size() - 2; i >= 0; i--) {
            if (chain.get(0).follows(found.get(i))
                    && (found.get(i).bracketed() || found.get(i).isMany())) {
                chain.add(0, found.get(i));
            }
        }
        boolean bracketed = chain.size() > 1 && chain.stream().allMatch(Found::bracketed);
        if (!bracketed && !isPartedBehind(end, lastCount)) {
            return List.of();
        }
        List<Counted> counted = new ArrayList<>();
        int from = 0;
        for (Found each : chain) {
            counted.add(
                    new Counted(each.group(), from, each.from(), each.equals(end) ? tail(end.to()) : line.length()));
            from = each.to();
        }
        return counted;
    }

    /** A remark that turns is none of the dance's turns. */
    private int tail(int to) {
        return DanceLine.movesNothing(line.substring(to)) ? to : line.length();
    }

    /** What stands behind the last counts moves no foot: "(8) - you face 6 o'clock". */
    private boolean isRemark(int to) {
        return DanceLine.movesNoFoot(line.substring(to));
    }

    private boolean isPartedBehind(Found end, int lastCount) {
        int before = end.from() - 1;
        boolean wide = before > 0
                && (line.charAt(before) == '\t'
                        || (Scanner.isSpace(line.charAt(before)) && Scanner.isSpace(line.charAt(before - 1))));
        int word = back(end.from()) - 1;
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
            Found first = found.get(i);
            int number = first.first().number();
            boolean parted = back(first.from()) > 0 && ":-.".indexOf(line.charAt(back(first.from()) - 1)) >= 0;
            boolean begins = first.isMany() && (number <= 1 || number == lastCount + 1);
            if (begins && (parted || first.bracketed()) && standsBetween(first)) {
                CountPlaces rest = new CountPlaces(" ".repeat(first.from()) + line.substring(first.from()));
                rest.find();
                return rest.before();
            }
        }
        return List.of();
    }

    /** The word before this index; a full stop that shortens it is none of it. */
    private String wordBefore(int from) {
        return Scanner.plain(line.substring(wordStart(from), wordEnd(from)));
    }

    private int wordStart(int from) {
        int start = wordEnd(from);
        while (start > 0 && Character.isLetter(line.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private int wordEnd(int from) {
        int end = back(from);
        boolean shortened = end > 1 && line.charAt(end - 1) == '.' && Character.isLetter(line.charAt(end - 2));
        return shortened ? end - 1 : end;
    }

    private int back(int from) {
        int at = from;
        while (at > 0 && Scanner.isSpace(line.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private int forward(int from) {
        int at = from;
        while (at < line.length() && Scanner.isSpace(line.charAt(at))) {
            at++;
        }
        return at;
    }
}
