package cuelead.window.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.song.Hearing;
import cuelead.time.BeatGrid;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class RowLayoutTest {
    static Rows rows(List<Integer> phrases) {
        int beats = phrases.stream().mapToInt(length -> length).sum();
        double[] seconds = new double[beats];
        int[] inBar = new int[beats];
        int[] inPhrase = new int[beats];
        int beat = 0;
        for (int length : phrases) {
            for (int count = 1; count <= length; count++) {
                seconds[beat] = 0.5 * beat;
                inBar[beat] = 1 + (count - 1) % 4;
                inPhrase[beat++] = count;
            }
        }
        BeatGrid grid = new BeatGrid(seconds, inBar, inPhrase);
        return Rows.of(new Hearing(grid, List.of(), OptionalDouble.empty()), Optional.empty());
    }

    /** Cells are equally wide, lie within the place where there is any, do not overlap, and are found where they lie. */
    @Property(tries = 100)
    void cellsLieSideBySide(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 2, max = 12) Integer> phrases,
            @ForAll @IntRange(min = 300, max = 2500) int width,
            @ForAll @IntRange(min = 10, max = 40) int em) {
        RowLayout layout = RowLayout.of(rows(phrases), width, em);
        Rectangle before = new Rectangle();
        for (int beat = 0; beat < layout.rows().beats(); beat++) {
            Rectangle cell = layout.cellOf(beat);
            assertEquals(layout.cell(), cell.width);
            assertTrue(cell.x >= layout.place() && cell.x + cell.width <= layout.width(), cell.toString());
            assertTrue(cell.y + cell.height <= layout.totalHeight());
            assertTrue(!cell.intersects(before), cell + " over " + before);
            assertEquals(OptionalInt.of(beat), layout.beatAt(cell.x, cell.y));
            assertEquals(OptionalInt.of(beat), layout.beatAt(cell.x + cell.width - 1, cell.y + cell.height - 1));
            before = cell;
        }
    }

    @Test
    void nothingLiesBesideTheCells() {
        RowLayout layout = RowLayout.of(rows(List.of(8, 4)), 1000, 16);
        Rectangle last = layout.cellOf(11);
        assertEquals(OptionalInt.empty(), layout.beatAt(last.x + last.width + 1, last.y));
        assertEquals(OptionalInt.empty(), layout.beatAt(layout.place() - 1, last.y));
        assertEquals(OptionalInt.empty(), layout.beatAt(last.x, layout.totalHeight() + 1));
        assertEquals(OptionalInt.empty(), layout.beatAt(last.x, -1));
    }

    @Test
    void itFillsTheWidthWhereThereIsRoom() {
        assertEquals(1000, RowLayout.of(rows(List.of(8, 4)), 1000, 16).width());
    }
}
