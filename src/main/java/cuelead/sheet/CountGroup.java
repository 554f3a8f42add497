package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Count.Split;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The counts at the head of a line: {@code 1-2}, {@code 1,2}, {@code 1 2}, {@code 3&4}, {@code &5-6}, {@code 5-6&},
 * {@code 1a2}, {@code 1-2-3}, {@code count 2&:}; {@code 8&1} where the last is the first count of the next section.
 *
 * @param counts as written, in order; a pickup {@code &5} is the "and" of 4; behind {@code 8&} the first of the next
 *               section is 9
 * @param column 1-based column of the first
 * @param end    0-based index of the first character behind
 */
record CountGroup(List<Count> counts, int column, int end) {
    private static final int LARGEST = 999;
    private static final int LONGEST_RANGE = 64;
    private static final int SHORTEST_BAR = 4;

    CountGroup {
        counts = List.copyOf(counts);
    }

    static Optional<CountGroup> read(String line) {
        return new Reader(line, 0).read();
    }

    /** The counts that begin at this 0-based index, or behind spaces there. */
    static Optional<CountGroup> read(String line, int from) {
        return new Reader(line, from).read();
    }

    /** "&" with no number beside it. */
    boolean isLoneAnd(String line) {
        return counts.size() == 1
                && !counts.get(0).isWhole()
                && end - column == 0
                && !Scanner.isDigit(line.charAt(column - 1));
    }

    /** Whether it ends with the first count of a section and begins before that: "8&1". */
    boolean runsOver(int countsInSection) {
        Count last = counts.get(counts.size() - 1);
        return counts.size() > 1
                && last.isWhole()
                && last.number() > 1
                && last.number() % countsInSection == 1
                && !counts.get(counts.size() - 2).isWhole();
    }

    String written(String line) {
        return line.substring(column - 1, end).strip();
    }

    /** One pass over the characters; {@code at} only moves forward. */
    private static final class Reader {
        private final String line;
        private final List<Count> counts = new ArrayList<>();
        private int at;
        private int end;

        Reader(String line, int from) {
            this.line = line;
            this.at = from;
        }

        Optional<CountGroup> read() {
            skipSpaces();
            skipUnit();
            int start = at;
            boolean more = split(0) || number(0);
            while (more && counts.size() <= LONGEST_RANGE) {
                more = next();
            }
            boolean ends = end >= line.length() || !Character.isLetterOrDigit(line.charAt(end));
            if (counts.isEmpty() || !ends || CountUnits.stand(line, end, counts.size())) {
                return Optional.empty();
            }
            return Optional.of(new CountGroup(counts, start + 1, end));
        }

        /** "Counts 1-2:" */
        private void skipUnit() {
            String word = wordAt(at);
            if (CountUnits.leads(word)) {
                at += word.length();
                skipSpaces();
            }
        }

        /** next := [&|a] | [dash | comma | space] number */
        private boolean next() {
            int last = counts.get(counts.size() - 1).number();
            boolean afterSplit = !counts.get(counts.size() - 1).isWhole();
            int before = at;
            skipSpaces();
            if ((!afterSplit || isLateA()) && split(last)) {
                return true;
            }
            boolean dash = isRangeSign();
            boolean comma = at < line.length() && line.charAt(at) == ',';
            if (dash || comma) {
                at++;
                skipSpaces();
                if (split(last)) {
                    return true;
                }
            }
            boolean taken = dash ? range(last) : number(last);
            if (!taken) {
                at = before;
            }
            return taken;
        }

        /** "7&a8": the last quarter behind the half. */
        private boolean isLateA() {
            boolean and = counts.get(counts.size() - 1).split() == Split.AND;
            return and && at < line.length() && Character.toLowerCase(line.charAt(at)) == 'a';
        }

        /** A dash, or "to" and "through" before a number. */
        private boolean isRangeSign() {
            if (at < line.length() && isDash(line.charAt(at))) {
                return true;
            }
            String word = wordAt(at);
            int mark = at;
            if (List.of("to", "through", "thru").contains(word)) {
                at += word.length() - 1;
                int number = at + 1;
                while (number < line.length() && Scanner.isSpace(line.charAt(number))) {
                    number++;
                }
                if (number < line.length() && Scanner.isDigit(line.charAt(number)) && number > at + 1) {
                    return true;
                }
            }
            at = mark;
            return false;
        }

        private boolean range(int last) {
            int value = peekNumber();
            if (value <= last || value - last > LONGEST_RANGE) {
                return false;
            }
            for (int number = last + 1; number < value; number++) {
                counts.add(Count.on(number));
            }
            return number(value - 1);
        }

        /** The next number; it must follow the one before, and be no fraction, clock or ordinal. */
        private boolean number(int last) {
            int value = peekNumber();
            boolean over = value == 1 && isOver(last);
            boolean follows = last == 0 ? value >= 1 : value == last + 1 || over;
            if (!follows || value > LARGEST) {
                return false;
            }
            while (at < line.length() && Scanner.isDigit(line.charAt(at))) {
                at++;
            }
            counts.add(Count.on(over ? last + 1 : value));
            end = at;
            return true;
        }

        /** "8&1": behind the "and" of a bar's last count comes the first of the next bar. */
        private boolean isOver(int last) {
            return last >= SHORTEST_BAR
                    && (last % 4 == 0 || last % 6 == 0)
                    && !counts.get(counts.size() - 1).isWhole();
        }

        /** "&" or "a" behind a count, or before the first one. */
        private boolean split(int last) {
            if (at >= line.length()) {
                return false;
            }
            char c = line.charAt(at);
            boolean and = c == '&' || c == '+';
            boolean a = (c == 'a' || c == 'A') && (at + 1 >= line.length() || !Character.isLetter(line.charAt(at + 1)));
            if (!and && !a) {
                return false;
            }
            int mark = at;
            at++;
            skipSpaces();
            int number = last > 0 ? last : peekNumber() - 1;
            boolean behind = mark > 0 && Scanner.isDigit(line.charAt(mark - 1));
            boolean attached = and || behind || (at == mark + 1 && (last > 0 || number >= 0));
            if (number < 0 || !attached) {
                at = mark;
                return false;
            }
            counts.add(new Count(number, and ? Split.AND : Split.A));
            at = mark + 1;
            end = at;
            return true;
        }

        /** The whole number that stands here, or -1. */
        private int peekNumber() {
            int stop = at;
            int value = 0;
            while (stop < line.length() && Scanner.isDigit(line.charAt(stop)) && stop - at < 4) {
                value = value * 10 + (line.charAt(stop) - '0');
                stop++;
            }
            boolean other = stop < line.length()
                    && "/:.".indexOf(line.charAt(stop)) >= 0
                    && stop + 1 < line.length()
                    && Scanner.isDigit(line.charAt(stop + 1));
            return stop == at || other || isOrdinal(stop) ? -1 : value;
        }

        private boolean isOrdinal(int stop) {
            String word = wordAt(stop);
            return !word.isEmpty() && !word.equals("a");
        }

        private String wordAt(int from) {
            int stop = from;
            while (stop < line.length() && Character.isLetter(line.charAt(stop))) {
                stop++;
            }
            return Scanner.plain(line.substring(from, stop));
        }

        private void skipSpaces() {
            while (at < line.length() && Scanner.isSpace(line.charAt(at))) {
                at++;
            }
        }

        private static boolean isDash(char c) {
            return c == '-' || c == '\u2013' || c == '\u2014';
        }
    }
}
