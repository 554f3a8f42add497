package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A line of the sheet, perhaps with some of its words put otherwise. A value; what its words come to is found once a
 * reading, for every layout that is tried asks for it again.
 */
final class SheetLine {
    private final int number;
    private final String text;
    private final Optional<LineKind> told;
    private final List<Spot> spots;
    private final TriedLines tried;

    /**
     * @param number 1-based
     * @param text   without its line end
     * @param told   what it is known to be, whatever its words say
     * @param spots  where its characters stand in the sheet, in order; at least one, the first from index 0
     * @param tried  what lines of the same reading came to; no part of the value
     */
    private SheetLine(int number, String text, Optional<LineKind> told, List<Spot> spots, TriedLines tried) {
        this.number = number;
        this.text = text;
        this.told = told;
        this.spots = List.copyOf(spots);
        this.tried = tried;
    }

    int number() {
        return number;
    }

    String text() {
        return text;
    }

    Optional<LineKind> told() {
        return told;
    }

    List<Spot> spots() {
        return spots;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SheetLine line
                && number == line.number
                && text.equals(line.text)
                && told.equals(line.told)
                && spots.equals(line.spots);
    }

    @Override
    public int hashCode() {
        return Objects.hash(number, text, told, spots);
    }

    @Override
    public String toString() {
        return number + ": " + text;
    }

    /** From this 0-based index of the text on, the characters stand from that 0-based index of a line of the sheet on. */
    record Spot(int from, int line, int index) {
        Spot moved(int by) {
            return new Spot(from + by, line, index);
        }
    }

    /** A line whose words tell what it is. */
    SheetLine(int number, String text) {
        this(number, text, new TriedLines());
    }

    /** The same as one of the lines of a reading. */
    SheetLine(int number, String text, TriedLines tried) {
        this(number, text, Optional.empty(), List.of(new Spot(0, number, 0)), tried);
    }

    SheetLine as(LineKind kind) {
        return new SheetLine(number, text, Optional.of(kind), spots, tried);
    }

    /** The same line with words from elsewhere before it. */
    SheetLine behind(String words) {
        return with(0, 0, words);
    }

    /** The same line with other words between two 0-based indices; they stand where those stood. */
    SheetLine with(int from, int to, String words) {
        List<Spot> moved = new ArrayList<>();
        spots.stream().filter(spot -> spot.from() < from).forEach(moved::add);
        Origins.Place begin = at(from);
        moved.add(new Spot(from, begin.line(), begin.column() - 1));
        Origins.Place end = at(to);
        moved.add(new Spot(from + words.length(), end.line(), end.column() - 1));
        int by = words.length() - (to - from);
        spots.stream().filter(spot -> spot.from() > to).forEach(spot -> moved.add(spot.moved(by)));
        return new SheetLine(number, text.substring(0, from) + words + text.substring(to), told, moved, tried);
    }

    /** The characters between two 0-based indices as a line of their own. */
    SheetLine part(int from, int to) {
        List<Spot> moved = new ArrayList<>();
        Origins.Place begin = at(from);
        moved.add(new Spot(0, begin.line(), begin.column() - 1));
        spots.stream()
                .filter(spot -> spot.from() > from && spot.from() < to)
                .forEach(spot -> moved.add(spot.moved(-from)));
        return new SheetLine(begin.line(), text.substring(from, to), told, moved, tried);
    }

    /** This line and the one below it, with a space between them. */
    SheetLine and(SheetLine below) {
        String above = text.stripTrailing() + " ";
        int from = below.firstColumn() - 1;
        SheetLine rest = below.part(from, below.text().length());
        List<Spot> all = new ArrayList<>(spots);
        rest.spots().forEach(spot -> all.add(spot.moved(above.length())));
        return new SheetLine(number, above + rest.text(), told, all, tried);
    }

    /** Where the character at this 0-based index stands in the sheet; words from elsewhere stand before what follows. */
    Origins.Place at(int index) {
        Spot spot = spots.get(0);
        int limit = Integer.MAX_VALUE;
        for (Spot next : spots) {
            if (next.from() <= index) {
                spot = next;
                limit = Integer.MAX_VALUE;
            } else if (next.line() == spot.line() && limit == Integer.MAX_VALUE) {
                limit = Math.max(spot.index(), next.index());
            }
        }
        return new Origins.Place(spot.line(), Math.min(limit, spot.index() + Math.max(0, index - spot.from())) + 1);
    }

    static List<SheetLine> of(String sheet) {
        List<SheetLine> lines = new ArrayList<>();
        TriedLines tried = new TriedLines();
        String[] texts = sheet.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
        for (int i = 0; i < texts.length; i++) {
            lines.add(new SheetLine(i + 1, Characters.plain(texts[i]), tried));
        }
        return lines;
    }

    boolean isBlank() {
        return firstColumn() > text.length();
    }

    /** 1-based column of the first character that is no space. */
    int firstColumn() {
        int index = 0;
        while (index < text.length() && Scanner.isSpace(text.charAt(index))) {
            index++;
        }
        return index + 1;
    }

    List<Token> tokens() {
        return tried.tokens(text);
    }

    /** What the lines of its reading came to. */
    TriedLines tried() {
        return tried;
    }

    /** Its counts, as {@link CountPlaces#of}. */
    List<CountPlaces.Counted> counted(int lastCount) {
        return tried.counted(text, lastCount);
    }

    /** As {@link DanceLine#isDanced}. */
    boolean isDanced() {
        return tried.isDanced(text);
    }

    /** Which lines of its reading fill their counts. */
    LineFit fit() {
        return tried.fit();
    }

    /** As {@link LineFit#fits}. */
    boolean fits() {
        return fit().fits(text);
    }

    /** As {@link WallNote#namesWall}. */
    boolean namesWall() {
        return tried.namesWall(this);
    }

    /** What it is known to be, or what its words tell. */
    LineKind kind() {
        return told.orElseGet(() -> tried.kind(this));
    }
}
