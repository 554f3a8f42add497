package cuelead.sheet;

import cuelead.dance.Count;

/** A place where counts stand: from and to with their brackets and words such as "counts". */
record FoundCounts(CountGroup group, int from, int to, boolean bracketed) {
    private static final int MOST_LEFT_OUT = 3;

    Count first() {
        return group.counts().get(0);
    }

    Count last() {
        return group.counts().get(group.counts().size() - 1);
    }

    /** Whether these go on where those end. */
    boolean follows(FoundCounts before) {
        int number = before.last().number();
        boolean next = first().number() == number + 1 && first().isWhole();
        return next
                || (first().number() == number
                        && !first().isWhole()
                        && before.last().isWhole());
    }

    /** Whether a count is left out between those and these, both being in brackets. */
    boolean leavesOut(FoundCounts before) {
        int left = first().number() - before.last().number();
        return bracketed && before.bracketed && left > 0 && left <= MOST_LEFT_OUT;
    }

    /** "on 5", "for 3 and", "count 1": a word says that they are counts. */
    boolean told(String line) {
        return !bracketed && !line.substring(from, group.column() - 1).isBlank();
    }

    boolean isMany() {
        return group.counts().size() > 1;
    }
}
