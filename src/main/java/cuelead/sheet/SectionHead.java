package cuelead.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The line above an eight: {@code [1-8] HEADING}, {@code S1: Heading}, {@code Section 1 [1-8] Heading},
 * {@code A[1-8]}, {@code Part B}.
 *
 * @param part    the letter of a phrased part, or empty
 * @param first   first count of the bracket; 0 without one
 * @param last    last count of the bracket; 0 without one
 * @param heading the rest of the line
 * @param opensPart whether the line only names a part ("PART A - 32 counts")
 * @param numbered whether the section has a number or a name of its own
 */
record SectionHead(String part, int first, int last, String heading, boolean opensPart, boolean numbered) {

    static Optional<SectionHead> read(String line) {
        return new Reader(line).read();
    }

    /** A heading of words alone. */
    static SectionHead words(String heading) {
        return new SectionHead("", 0, 0, heading, false, false);
    }

    /** "T1: Rocking chair" within a tag: a section of its own. */
    static Optional<SectionHead> inTag(SheetLine line) {
        Matcher numbered = IN_TAG.matcher(line.text());
        return numbered.find() && !line.namesWall()
                ? Optional.of(read(numbered.group(1))
                        .orElseGet(() -> words(numbered.group(1).strip())))
                : Optional.empty();
    }

    private static final Pattern IN_TAG = Pattern.compile(
            "^\\W*(?:t|(?:tag|bridge) (?:section|part))\\s?\\d\\s*[:.)\u2013-]\\s*(.*)$", Pattern.CASE_INSENSITIVE);

    /** Whether it is told by its bracket alone. */
    boolean isBareRange() {
        return hasRange() && part.isEmpty() && !numbered;
    }

    boolean hasRange() {
        return last > 0;
    }

    int length() {
        return last - first + 1;
    }

    private static final class Reader {
        private final String line;
        private int at;
        private String part = "";
        private boolean numbered;
        private boolean partOnly;

        Reader(String line) {
            this.line = line;
        }

        /** head := [part] [section] [range] heading, with at least one of the three */
        Optional<SectionHead> read() {
            skip();
            int bracket = at;
            boolean framed = at < line.length() && line.charAt(at) == '[' && unitAhead();
            at = framed ? bracket + 1 : bracket;
            boolean lettered = part();
            boolean named = section() || lettered || roman();
            if (framed && at < line.length() && line.charAt(at) == ']') {
                at++;
            }
            Optional<CountRange> range = range();
            if (!named && range.isEmpty()) {
                return Optional.empty();
            }
            skip();
            while (at < line.length() && ":-\u2013.".indexOf(line.charAt(at)) >= 0) {
                at++;
                skip();
            }
            String heading = line.substring(at).strip();
            if (IS.contains(word(at)) && range.isEmpty()) {
                return Optional.empty();
            }
            boolean opens = partOnly && range.isEmpty() && !numbered;
            int first = range.map(CountRange::first).orElse(0);
            int last = range.map(CountRange::last).orElse(0);
            return Optional.of(new SectionHead(part, first, last, heading, opens, numbered));
        }

        /** "Part A", or the letter alone before a bracket or a number: "A[1-8]", "B2". */
        private boolean part() {
            String word = word(at);
            if (word.equals("part")) {
                int letter = spaces(at + word.length());
                if (word(letter).length() == 1) {
                    part = word(letter).toUpperCase(Locale.ROOT);
                    at = letter + 1;
                    partOnly = at >= line.length() || !Scanner.isDigit(line.charAt(at));
                    return true;
                }
                return false;
            }
            boolean letter = word.length() == 1 && word.charAt(0) >= 'a' && word.charAt(0) <= 'd';
            int next = spaces(at + 1);
            if (letter && next < line.length() && isPartEnd(next)) {
                part = word.toUpperCase(Locale.ROOT);
                at++;
                return true;
            }
            return false;
        }

        private boolean isPartEnd(int next) {
            char c = line.charAt(next);
            return ("[(".indexOf(c) >= 0 && isRange(next)) || (Scanner.isDigit(c) && next == at + 1);
        }

        /** "S1", "Sec 2", "Section 3", or the bare number behind a part's letter. */
        private boolean section() {
            int mark = at;
            skip();
            String word = word(at);
            boolean sign = word.isEmpty() && at < line.length() && line.charAt(at) == '\u00a7';
            boolean unit = sign || UNITS.contains(word);
            int number = unit ? spaces(at + (sign ? 1 : word.length())) : at;
            if (unit && Set.of("no", "nr", "number").contains(word(number))) {
                number = spaces(number + word(number).length());
            }
            if (unit && number < line.length() && ".#".indexOf(line.charAt(number)) >= 0) {
                number = spaces(number + 1);
            }
            boolean ok = (unit || (!part.isEmpty() && !partOnly))
                    && number < line.length()
                    && Scanner.isDigit(line.charAt(number));
            if (!ok) {
                at = mark;
                return false;
            }
            at = number;
            digits();
            numbered = true;
            return true;
        }

        private static final Set<String> UNITS =
                Set.of("s", "sec", "sect", "section", "set", "part", "eight", "six", "block", "pattern", "phrase");

        /** "III. ", "iv) " */
        private boolean roman() {
            String word = word(at);
            int end = at + word.length();
            boolean ends = end + 1 < line.length() && ".):".indexOf(line.charAt(end)) >= 0;
            if (!ROMAN.contains(word) || !ends || !Scanner.isSpace(line.charAt(end + 1))) {
                return false;
            }
            at = end + 1;
            numbered = true;
            return true;
        }

        /** "Section 3 is the tricky one" */
        private static final Set<String> IS =
                Set.of("is", "was", "has", "are", "may", "can", "should", "will", "starts", "ends", "begins", "goes");

        private static final Set<String> ROMAN =
                Set.of("i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii");

        /** "[S1]", "[Section 2]" */
        private boolean unitAhead() {
            int mark = at;
            at++;
            boolean unit = section();
            at = mark;
            numbered = false;
            return unit;
        }

        private boolean isRange(int from) {
            return CountRange.at(line, from).isPresent();
        }

        /** A range in brackets, perhaps behind a colon or a dash. */
        private Optional<CountRange> range() {
            int from = spaces(at);
            while (from < line.length() && ":-".indexOf(line.charAt(from)) >= 0) {
                from = spaces(from + 1);
            }
            Optional<CountRange> range = CountRange.at(line, from);
            range.ifPresent(found -> at = found.end());
            return range;
        }

        private void digits() {
            while (at < line.length() && Scanner.isDigit(line.charAt(at))) {
                at++;
            }
        }

        private String word(int from) {
            int stop = from;
            while (stop < line.length() && Character.isLetter(line.charAt(stop))) {
                stop++;
            }
            return Scanner.plain(line.substring(from, stop));
        }

        private int spaces(int from) {
            int index = from;
            while (index < line.length() && Scanner.isSpace(line.charAt(index))) {
                index++;
            }
            return index;
        }

        private void skip() {
            at = spaces(at);
        }
    }
}
