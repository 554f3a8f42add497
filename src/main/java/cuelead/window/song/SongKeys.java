package cuelead.window.song;

import cuelead.window.song.Selected.Reach;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;

/** What the keys mean among the rows of a song. */
final class SongKeys {
    private static final int ROWS_A_PAGE = 8;

    private SongKeys() {}

    /** What a key that was pressed orders; empty where it orders nothing. */
    static Optional<SongOrder> order(KeyEvent key) {
        boolean isControl = (key.getModifiersEx() & InputEvent.CTRL_DOWN_MASK) != 0;
        boolean isAlt = (key.getModifiersEx() & (InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
        if (isAlt) {
            return Optional.empty();
        }
        return Optional.ofNullable(isControl ? withControl(key) : alone(key));
    }

    private static SongOrder withControl(KeyEvent key) {
        return switch (key.getKeyCode()) {
            case KeyEvent.VK_Z -> key.isShiftDown() ? SongOrder.REDO : SongOrder.UNDO;
            case KeyEvent.VK_Y -> SongOrder.REDO;
            default -> null;
        };
    }

    private static SongOrder alone(KeyEvent key) {
        return switch (key.getKeyCode()) {
            case KeyEvent.VK_SPACE -> SongOrder.PLAY;
            case KeyEvent.VK_T -> SongOrder.TAP;
            case KeyEvent.VK_1, KeyEvent.VK_NUMPAD1 -> SongOrder.ONE_IS_HERE;
            case KeyEvent.VK_2, KeyEvent.VK_NUMPAD2 -> SongOrder.TWO_FOR_THREE;
            case KeyEvent.VK_3, KeyEvent.VK_NUMPAD3 -> SongOrder.THREE_FOR_TWO;
            case KeyEvent.VK_D -> SongOrder.BEGINS_HERE;
            case KeyEvent.VK_M -> key.isShiftDown() ? SongOrder.LATER : SongOrder.EARLIER;
            case KeyEvent.VK_H -> SongOrder.HALF_BEAT;
            case KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS, KeyEvent.VK_ADD -> SongOrder.TWICE;
            case KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT -> SongOrder.HALF;
            default -> null;
        };
    }

    /** Where a key leads; empty where it leads nowhere. Shift keeps the other end of a stretch. */
    static Optional<Selected> moved(KeyEvent key, Selected from, Rows rows) {
        Reach reach = key.isShiftDown() ? Reach.A_STRETCH : Reach.A_BEAT;
        Row row = rows.rows().get(rows.rowOf(from.beat()));
        boolean isControl = key.isControlDown();
        return switch (key.getKeyCode()) {
            case KeyEvent.VK_LEFT -> Optional.of(from.step(-1, reach, rows));
            case KeyEvent.VK_RIGHT -> Optional.of(from.step(1, reach, rows));
            case KeyEvent.VK_UP -> Optional.of(from.rowsDown(-1, reach, rows));
            case KeyEvent.VK_DOWN -> Optional.of(from.rowsDown(1, reach, rows));
            case KeyEvent.VK_PAGE_UP -> Optional.of(from.rowsDown(-ROWS_A_PAGE, reach, rows));
            case KeyEvent.VK_PAGE_DOWN -> Optional.of(from.rowsDown(ROWS_A_PAGE, reach, rows));
            case KeyEvent.VK_HOME ->
                Optional.of(from.to(isControl ? 0 : row.first().beat(), reach, rows));
            case KeyEvent.VK_END ->
                Optional.of(from.to(isControl ? rows.beats() - 1 : row.last().beat(), reach, rows));
            default -> Optional.empty();
        };
    }
}
