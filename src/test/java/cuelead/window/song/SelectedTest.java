package cuelead.window.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectedTest {
    private final Rows rows = RowLayoutTest.rows(List.of(8, 8, 4, 8));

    private static KeyEvent key(int code, int modifiers) {
        return new KeyEvent(new JPanel(), KeyEvent.KEY_PRESSED, 0, modifiers, code, KeyEvent.CHAR_UNDEFINED);
    }

    private Selected moved(Selected from, int code, int modifiers) {
        return SongKeys.moved(key(code, modifiers), from, rows).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "10, 37, 0, 9", "10, 39, 0, 11", "0, 37, 0, 0", "27, 39, 0, 27",
        "10, 38, 0, 2", "2, 38, 0, 2", "14, 40, 0, 19", "19, 40, 0, 23",
        "10, 36, 0, 8", "10, 35, 0, 15", "10, 36, 128, 0", "10, 35, 128, 27",
        "2, 34, 0, 22", "27, 33, 0, 7"
    })
    void keysMoveWithinTheRows(int from, int code, int modifiers, int to) {
        assertEquals(Selected.at(to), moved(Selected.at(from), code, modifiers));
    }

    @Test
    void shiftSelectsAStretch() {
        Selected selected = moved(Selected.at(10), KeyEvent.VK_RIGHT, InputEvent.SHIFT_DOWN_MASK);
        selected = moved(selected, KeyEvent.VK_DOWN, InputEvent.SHIFT_DOWN_MASK);
        assertEquals(new Selected(19, 10), selected);
        assertTrue(selected.holds(10) && selected.holds(15) && !selected.holds(20));
        assertEquals(Selected.at(18), moved(selected, KeyEvent.VK_LEFT, 0));
    }

    /** Its outer beats lie within it, their neighbours do not. */
    @Test
    void theStretchOfItsBeats() {
        BeatGrid grid = BeatGrid.steady(new Tempo(120), 1, 28, 4);
        Stretch stretch = new Selected(19, 10).stretch(grid).orElseThrow();
        assertTrue(stretch.fromSeconds() > grid.beatSeconds(9) && stretch.fromSeconds() < grid.beatSeconds(10));
        assertTrue(stretch.toSeconds() > grid.beatSeconds(19) && stretch.toSeconds() < grid.beatSeconds(20));
        assertEquals(Optional.empty(), Selected.at(3).stretch(grid));
    }

    @Test
    void itStaysWhereItWasInTheSong() {
        BeatGrid twice = BeatGrid.steady(new Tempo(240), 1, 56, 4);
        assertEquals(new Selected(20, 8), Selected.nearest(6.05, 2.95, twice));
    }

    @ParameterizedTest
    @CsvSource({
        "32, 0, PLAY",
        "84, 0, TAP",
        "49, 0, ONE_IS_HERE",
        "68, 0, BEGINS_HERE",
        "77, 0, EARLIER",
        "77, 64, LATER",
        "72, 0, HALF_BEAT",
        "521, 0, TWICE",
        "45, 0, HALF",
        "51, 0, THREE_FOR_TWO",
        "50, 0, TWO_FOR_THREE",
        "90, 128, UNDO",
        "89, 128, REDO",
        "90, 192, REDO"
    })
    void everyOrderHasAKey(int code, int modifiers, SongOrder order) {
        assertEquals(Optional.of(order), SongKeys.order(key(code, modifiers)));
    }

    /** Keys of menus, of pages and of buttons are left alone. */
    @Test
    void otherKeysOrderNothing() {
        assertEquals(Optional.empty(), SongKeys.order(key(KeyEvent.VK_1, InputEvent.CTRL_DOWN_MASK)));
        assertEquals(Optional.empty(), SongKeys.order(key(KeyEvent.VK_T, InputEvent.ALT_DOWN_MASK)));
        assertEquals(Optional.empty(), SongKeys.moved(key(KeyEvent.VK_1, 0), Selected.FIRST, rows));
    }
}
