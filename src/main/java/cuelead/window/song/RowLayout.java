package cuelead.window.song;

import java.awt.Rectangle;
import java.util.OptionalInt;

/**
 * Where rows and their cells lie; all cells are equally wide. Pixels of the layout.
 *
 * @param rows   what is laid out
 * @param place  width of what is danced, at the left
 * @param notes  width of the notes, at the right
 * @param cell   width of a cell
 * @param height of a row, with the gap below it
 */
record RowLayout(Rows rows, int place, int notes, int cell, int height) {
    static final int GAP = 5;
    private static final int LEAST_CELL = 30;
    private static final int LARGEST_CELL = 84;

    /**
     * As wide as there is room.
     *
     * @param em height of usual letters
     */
    static RowLayout of(Rows rows, int width, int em) {
        int place = 11 * em;
        int notes = Math.max(14 * em, width / 4);
        int cell = Math.max(LEAST_CELL, Math.min(LARGEST_CELL, (width - place - notes) / rows.across()));
        return new RowLayout(rows, place, Math.max(14 * em, width - place - cell * rows.across()), cell, 3 * em + GAP);
    }

    int width() {
        return place + cell * rows.across() + notes;
    }

    int totalHeight() {
        return rows.rows().size() * height;
    }

    /** All of a row, without the gap below it. */
    Rectangle row(int index) {
        return new Rectangle(0, index * height, width(), height - GAP);
    }

    Rectangle cellOf(int beat) {
        int row = rows.rowOf(beat);
        int column = beat - rows.rows().get(row).first().beat();
        return new Rectangle(place + column * cell, row * height, cell, height - GAP);
    }

    /** Where the notes of a row stand: right behind its last cell. */
    Rectangle notesOf(int row) {
        int cells = place + rows.rows().get(row).cells().size() * cell;
        return new Rectangle(cells, row * height, width() - cells, height - GAP);
    }

    /** The beat at a point; empty where there is none. */
    OptionalInt beatAt(int x, int y) {
        int row = Math.floorDiv(y, height);
        if (row < 0 || row >= rows.rows().size() || x < place) {
            return OptionalInt.empty();
        }
        int column = (x - place) / cell;
        Row at = rows.rows().get(row);
        return column < at.cells().size() ? OptionalInt.of(at.first().beat() + column) : OptionalInt.empty();
    }
}
