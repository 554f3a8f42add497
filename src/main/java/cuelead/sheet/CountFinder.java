package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds all that may be counts in a line, each with its brackets and with words such as "counts" before it. */
final class CountFinder {
    private static final Set<String> UNITS =
            Set.of("count", "counts", "ct", "cts", "beat", "beats", "on", "for", "from", "during");

    private static final Set<String> AGAIN =
            Set.of("repeat", "repeats", "repeating", "rpt", "mirror", "mirroring", "reverse", "as");

    private final String line;
    private final List<FoundCounts> found = new ArrayList<>();

    private CountFinder(String line) {
        this.line = line;
    }

    /** In the order of the line; an "and" alone takes its number from the counts beside it, or from the last one before. */
    static List<FoundCounts> in(String line, int lastCount) {
        CountFinder finder = new CountFinder(line);
        finder.find();
        finder.dropLinks();
        finder.number(lastCount);
        return finder.found;
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

    /** "2 cross behind, & step side, 3 cross": between two counts an "and" with its step is one; elsewhere it links. */
    private void dropLinks() {
        for (int i = found.size() - 1; i >= 0; i--) {
            FoundCounts each = found.get(i);
            boolean bare = each.group().isLoneAnd(line) && !each.bracketed();
            boolean between = i > 0
                    && i + 1 < found.size()
                    && isSingle(found.get(i - 1))
                    && isSingle(found.get(i + 1))
                    && found.get(i + 1).first().number()
                            == found.get(i - 1).first().number() + 1;
            if (bare && !isLineHead(each) && !between) {
                found.remove(i);
            }
        }
    }

    private boolean isLineHead(FoundCounts each) {
        return line.substring(0, each.from()).isBlank();
    }

    private static boolean isSingle(FoundCounts each) {
        return !each.isMany() && each.first().isWhole();
    }

    /** "(&)", ", & step": it takes its number from the counts beside it. */
    private Optional<CountGroup> loneAnd(int at) {
        boolean and = line.charAt(at) == '&' || line.charAt(at) == 'a';
        int before = Spaces.back(line, at) - 1;
        boolean parted = before >= 0 && ",;.".indexOf(line.charAt(before)) >= 0;
        if (line.charAt(at) == '&' && parted && at + 1 < line.length() && Scanner.isSpace(line.charAt(at + 1))) {
            return Optional.of(new CountGroup(List.of(new Count(0, Count.Split.AND)), at + 1, at + 1));
        }
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
            FoundCounts each = found.get(i);
            boolean lone = each.group().isLoneAnd(line);
            if (lone) {
                int before = i > 0 ? found.get(i - 1).last().number() : lastCount;
                boolean leads =
                        i == 0 && found.size() > 1 && !found.get(1).group().isLoneAnd(line);
                int number = leads ? found.get(1).first().number() - 1 : before;
                Count count = new Count(Math.max(0, number), each.first().split());
                CountGroup group = new CountGroup(
                        List.of(count), each.group().column(), each.group().end());
                found.set(i, new FoundCounts(group, each.from(), each.to(), each.bracketed()));
            }
        }
    }

    /** Not "turn 1/4" nor "12:00", which the counts know; not "x 2", "wall 3", "section 1". */
    private boolean isPlain(CountGroup group) {
        String word = wordBefore(group.column() - 1);
        if (isDancedAgain(group.column() - 1)) {
            return false;
        }
        boolean named = !word.isEmpty() && !UNITS.contains(word);
        return !named
                || group.counts().size() > 1
                || !Set.of("x", "wall", "walls", "section", "sec", "set", "part", "tag", "s", "to", "step", "no")
                        .contains(word);
    }

    /** "Repeat counts 1-4 leading with L   5-8": the first are those of what is danced again. */
    private boolean isDancedAgain(int at) {
        int from = at;
        String word = wordBefore(from);
        while (UNITS.contains(word)) {
            from = wordStart(from);
            word = wordBefore(from);
        }
        return AGAIN.contains(word);
    }

    private boolean mayBegin(int at) {
        char c = line.charAt(at);
        boolean pickupA = (c == 'a' || c == 'A') && at + 1 < line.length() && Scanner.isDigit(line.charAt(at + 1));
        boolean loneA = c == 'a' && at > 0 && "([".indexOf(line.charAt(at - 1)) >= 0;
        boolean starts = Scanner.isDigit(c) || c == '&' || pickupA || loneA;
        return starts
                && (at == 0 || Scanner.isSpace(line.charAt(at - 1)) || "([,;.:".indexOf(line.charAt(at - 1)) >= 0);
    }

    private FoundCounts found(CountGroup group) {
        int from = Spaces.back(line, group.column() - 1);
        int to = group.end();
        boolean opened = from > 0 && "([".indexOf(line.charAt(from - 1)) >= 0;
        int close = Spaces.forward(line, to);
        boolean closed = close < line.length() && ")]".indexOf(line.charAt(close)) >= 0;
        boolean bracketed = opened && closed;
        from = bracketed ? Spaces.back(line, from - 1) : from;
        to = bracketed ? close + 1 : to;
        String word = wordBefore(from);
        while (UNITS.contains(word)) {
            from = wordStart(from);
            word = wordBefore(from);
        }
        boolean opens = !bracketed
                && from > 0
                && "([".indexOf(line.charAt(Spaces.back(line, from) - 1 < 0 ? 0 : Spaces.back(line, from) - 1)) >= 0;
        if (opens && closed) {
            return new FoundCounts(group, Spaces.back(line, from) - 1, close + 1, true);
        }
        return new FoundCounts(group, from, to, bracketed);
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
        int end = Spaces.back(line, from);
        boolean shortened = end > 1 && line.charAt(end - 1) == '.' && Character.isLetter(line.charAt(end - 2));
        return shortened ? end - 1 : end;
    }
}
