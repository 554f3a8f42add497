package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A line of the sheet with its counts found, before it is decided how it is read.
 *
 * @param line    as written
 * @param kind    what its words tell
 * @param counted its counts, each with the range of its steps; empty where it has none
 * @param apart   whether a blank line stands above it
 * @param more    lines that go on with its steps
 */
record Row(SheetLine line, LineKind kind, List<CountPlaces.Counted> counted, boolean apart, List<SheetLine> more) {
    Row(SheetLine line, LineKind kind, List<CountPlaces.Counted> counted, boolean apart) {
        this(line, kind, counted, apart, List.of());
    }

    private static final int SHORTEST_HEADING = 4;
    private static final int SHORTEST_BRACKET = 6;
    /** "5-8" above "1-2" ends an eight, and the next one begins. */
    private static final int SHORTEST_LOCAL = 6;

    static Row of(SheetLine line, int lastCount, boolean apart) {
        if (OwnLines.isOwn(line)) {
            return new Row(line, LineKind.NOTE, List.of(), apart);
        }
        LineKind kind = LineKind.of(line);
        boolean mayCount =
                switch (kind) {
                    case COUNTS, OTHER, NOTE, RESTART, SECTION -> true;
                    case TAG, SEQUENCE, ENDING, REPEAT -> false;
                };
        List<CountPlaces.Counted> found = mayCount ? line.counted(lastCount) : List.of();
        boolean lone = found.size() == 1 && found.get(0).group().isLoneAnd(line.text());
        List<CountPlaces.Counted> counted = lone ? List.of() : found;
        if (kind == LineKind.RESTART && tellsOfWalls(line)) {
            return new Row(line, kind, List.of(), apart);
        }
        boolean told = kind == LineKind.RESTART || kind == LineKind.NOTE;
        boolean only = told && counted.stream().noneMatch(each -> isDanced(line, each));
        return new Row(line, kind, only ? List.of() : counted, apart);
    }

    private static boolean isDanced(SheetLine line, CountPlaces.Counted steps) {
        return line.tried().isDanced(line.text().substring(steps.from(), steps.to()));
    }

    /** "Restart 1: wall 3 ...", "On wall 3 ... restart": no line of steps with a restart marked in it. */
    private static boolean tellsOfWalls(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(2)
                .anyMatch(token ->
                        token.text().startsWith("restart") || token.text().equals("wall"));
    }

    /** The same row with its first counts found otherwise. */
    Row withFirst(CountPlaces.Counted first) {
        List<CountPlaces.Counted> others = new ArrayList<>(counted);
        others.set(0, first);
        return new Row(line, kind, others, apart, more);
    }

    boolean isCounted() {
        return !counted.isEmpty() && kind != LineKind.SECTION;
    }

    /** Counts and nothing else: their steps stand above or below. */
    boolean isBareCounts() {
        return isCounted() && counted.size() == 1 && hasNoWords(prose(counted.get(0)));
    }

    private static boolean hasNoWords(String prose) {
        return prose.chars().noneMatch(Character::isLetterOrDigit);
    }

    String prose(CountPlaces.Counted each) {
        return line.text().substring(each.from(), each.to());
    }

    int firstCount() {
        Count first = counted.get(0).group().counts().get(0);
        return first.isWhole() ? first.number() : first.number() + 1;
    }

    int lastCount() {
        return last(counted.get(counted.size() - 1).group());
    }

    private static int last(CountGroup group) {
        return group.counts().get(group.counts().size() - 1).number();
    }

    /** The words before its first counts, where their steps stand behind them; blank where there are none. */
    SheetLine leadIn() {
        String before = countsBehind()
                ? ""
                : line.text().substring(0, counted.get(0).group().column() - 1);
        return line.part(0, LEADS_TO_COUNTS.matcher(before).replaceFirst("").length());
    }

    private static final Pattern LEADS_TO_COUNTS =
            Pattern.compile("\\W*(?:(?:\\b(?:and|then|on|for|counts?|cts?|beats?))\\W*)*$", Pattern.CASE_INSENSITIVE);

    /** Whether its counts stand behind its steps. */
    boolean countsBehind() {
        return isCounted() && counted.get(0).from() < counted.get(0).group().column() - 1;
    }

    /** A line that begins with a range of counts and whose steps are written out below it: a heading. */
    boolean isHeadingOf(Optional<Row> below) {
        boolean openBehind = countsBehind() && !line.text().stripTrailing().matches(".*[)\\]]:?");
        if (counted.size() != 1 || openBehind) {
            return false;
        }
        CountGroup upper = counted.get(0).group();
        boolean range = whole(upper) >= SHORTEST_HEADING && isUnbroken(upper);
        return range
                && below.filter(row -> !row.counted.isEmpty() && contains(upper, row))
                        .isPresent();
    }

    private static int whole(CountGroup group) {
        return (int) group.counts().stream().filter(Count::isWhole).count();
    }

    /** "1-8", "1-8&", "&1-8", "1-8&1": halves only at its ends. */
    private static boolean isUnbroken(CountGroup group) {
        List<Count> counts = group.counts();
        return counts.subList(1, Math.max(1, counts.size() - 2)).stream().allMatch(Count::isWhole);
    }

    /** Counts that begin at 1 begin anew in every section, so only the very next line tells; the first ones may be missing. */
    private boolean contains(CountGroup upper, Row below) {
        int first = upper.counts().get(0).number();
        int end = last(below.counted.get(0).group());
        boolean shorter = end < last(upper);
        boolean begins = below.firstCount() == 1
                || (first > 1 && whole(upper) >= SHORTEST_LOCAL && below.firstCount() <= end && end <= whole(upper));
        boolean local = begins
                && whole(upper) % 2 == 0
                && (whole(upper) >= SHORTEST_LOCAL || (isSquare() && !below.isSquare()))
                && (first - 1) % whole(upper) == 0;
        int lastLine = line.at(line.text().length()).line();
        boolean near = first > 1 || below.line.number() - lastLine == 1 || below.counted.size() > 1;
        return (below.firstCount() == first || local) && shorter && near;
    }

    /** "[1-4] WALKS" above "1-4 Walk back": one range twice is a heading and its steps. */
    private boolean isCountedAgain(Row below) {
        CountGroup upper = counted.get(0).group();
        return below.isCounted()
                && !below.countsBehind()
                && below.counted.get(0).group().counts().equals(upper.counts());
    }

    /** "(1-4) Walk back" is danced; "[1-8] VINES" is a heading, unless its steps stand behind it. */
    Row settled(Optional<Row> below) {
        boolean bare = kind == LineKind.SECTION
                && !counted.isEmpty()
                && SectionHead.read(line.text())
                        .filter(SectionHead::isBareRange)
                        .isPresent();
        if (bare && !isHeadingOf(below) && below.filter(this::isCountedAgain).isEmpty()) {
            int size = counted.get(0).group().counts().size();
            boolean danced = size < SHORTEST_BRACKET || isRound() || counted.size() > 1;
            return danced ? new Row(line, LineKind.COUNTS, counted, apart) : this;
        }
        return this;
    }

    private boolean isSquare() {
        return line.text().charAt(line.firstColumn() - 1) == '[';
    }

    private boolean isRound() {
        return line.text().charAt(line.firstColumn() - 1) == '(';
    }
}
