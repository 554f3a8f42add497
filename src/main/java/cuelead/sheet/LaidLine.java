package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line as it is read, put together from pieces of the sheet.
 *
 * @param text   its characters
 * @param kind   what the layout knows it to be; empty where its words tell
 * @param pieces where its characters come from, in order; at least one
 */
record LaidLine(String text, Optional<LineKind> kind, List<Piece> pieces) {
    LaidLine {
        pieces = List.copyOf(pieces);
    }

    /** From this 0-based index of the text on, the characters stand from there on in the sheet. */
    record Piece(int from, SheetLine line, int index) {}

    /** A line of the sheet as it stands. */
    static LaidLine whole(SheetLine line) {
        return new LaidLine(line.text(), line.told(), List.of(new Piece(0, line, 0)));
    }

    LaidLine as(LineKind known) {
        return new LaidLine(text, Optional.of(known), pieces);
    }

    /** The same line with other words between two 0-based indices; they stand where those stood. */
    LaidLine with(int from, int to, String words) {
        List<Piece> moved = new ArrayList<>();
        Piece replaced = pieces.get(0);
        Piece last = pieces.get(0);
        for (Piece piece : pieces) {
            replaced = piece.from() <= from ? piece : replaced;
            last = piece.from() <= to ? piece : last;
        }
        int shift = words.length() - (to - from);
        for (Piece piece : pieces) {
            if (piece.from() <= from) {
                moved.add(piece);
            }
        }
        moved.add(new Piece(from, replaced.line(), replaced.index() + from - replaced.from()));
        moved.add(new Piece(from + words.length(), last.line(), last.index() + to - last.from()));
        for (Piece piece : pieces) {
            if (piece.from() > to) {
                moved.add(new Piece(piece.from() + shift, piece.line(), piece.index()));
            }
        }
        return new LaidLine(text.substring(0, from) + words + text.substring(to), kind, moved);
    }

    /** How far its figures must be stretched to fill its counts, as {@link LineFit#cost}. */
    int cost() {
        return tried().fit().cost(text);
    }

    /** The same for all that stands behind the counts. */
    int wholeCost() {
        return tried().fit().wholeCost(text);
    }

    boolean fits() {
        return tried().fit().fits(text);
    }

    /** As it is read when this layout is chosen. */
    SheetLine asRead() {
        return numbered(1);
    }

    /** The same with a number. */
    SheetLine numbered(int number) {
        SheetLine line = new SheetLine(number, text, tried());
        return kind.map(line::as).orElse(line);
    }

    /** What the lines of its reading came to. */
    TriedLines tried() {
        return pieces.get(0).line().tried();
    }

    Origins.Place origin(int column) {
        Piece piece = pieces.get(0);
        for (Piece next : pieces) {
            piece = next.from() <= Math.max(0, column - 1) ? next : piece;
        }
        Origins.Place place = piece.line().at(piece.index() + Math.max(0, column - 1 - piece.from()));
        return column == 0 ? new Origins.Place(place.line(), 0) : place;
    }

    /** Puts a line together. */
    static final class Builder {
        private final StringBuilder text = new StringBuilder();
        private final List<Piece> pieces = new ArrayList<>();

        /** Characters of a line, from and to 0-based indices, with a space before them. */
        Builder add(SheetLine line, int from, int to) {
            text.append(text.isEmpty() ? "" : " ");
            pieces.add(new Piece(text.length(), line, from));
            text.append(line.text(), from, to);
            return this;
        }

        /** Characters that the sheet does not have, at a place of it. */
        Builder add(String words, SheetLine line, int index) {
            text.append(text.isEmpty() ? "" : " ");
            pieces.add(new Piece(text.length(), line, index));
            text.append(words);
            return this;
        }

        Builder add(LaidLine more) {
            text.append(text.isEmpty() ? "" : " ");
            int start = text.length();
            more.pieces().forEach(piece -> pieces.add(new Piece(start + piece.from(), piece.line(), piece.index())));
            text.append(more.text());
            return this;
        }

        LaidLine line() {
            return new LaidLine(text.toString(), Optional.empty(), pieces);
        }
    }
}
