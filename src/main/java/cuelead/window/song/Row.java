package cuelead.window.song;

import java.util.List;

/**
 * One phrase of the song, usually an eight (six in waltz).
 *
 * @param cells  its beats; never empty
 * @param opens  whether a wall, a tag or the ending begins with it
 * @param place  what is danced, such as {@code Wall 2, S1}
 * @param facing the way faced at its beginning, such as {@code 3 o'clock}; empty where nothing is danced
 * @param notes  what is out of the ordinary, in words
 * @param words  the heading of its section; may be empty
 * @param isOdd  whether it has fewer or more counts than usual
 */
record Row(
        List<Cell> cells, boolean opens, String place, String facing, List<String> notes, String words, boolean isOdd) {
    Row {
        cells = List.copyOf(cells);
        notes = List.copyOf(notes);
    }

    Cell first() {
        return cells.get(0);
    }

    Cell last() {
        return cells.get(cells.size() - 1);
    }
}
