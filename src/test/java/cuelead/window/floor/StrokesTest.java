package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.steer.Order;
import java.awt.event.KeyEvent;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class StrokesTest {
    private static KeyEvent pressed(int code, int modifiers) {
        return new KeyEvent(new JLabel(), KeyEvent.KEY_PRESSED, 0, modifiers, code, KeyEvent.CHAR_UNDEFINED);
    }

    private static KeyEvent typed(char letter) {
        return new KeyEvent(new JLabel(), KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, letter);
    }

    /** What can be done can be done by key. */
    @Test
    void everyOrderHasAKey() {
        Set<Order> reached = EnumSet.noneOf(Order.class);
        for (char letter = ' '; letter < 127; letter++) {
            Strokes.typed(typed(letter)).ifPresent(reached::add);
        }
        for (int code = 1; code < 256; code++) {
            Strokes.pressed(pressed(code, 0)).ifPresent(reached::add);
        }
        assertEquals(EnumSet.allOf(Order.class), reached);
    }

    /** A presenter's clicker sends Page Down and Page Up, and a point for a black screen (common practice, no source). */
    @Test
    void aClickerSteers() {
        assertEquals(Optional.of(Order.NEXT_SECTION), Strokes.pressed(pressed(KeyEvent.VK_PAGE_DOWN, 0)));
        assertEquals(Optional.of(Order.PREVIOUS_SECTION), Strokes.pressed(pressed(KeyEvent.VK_PAGE_UP, 0)));
        assertEquals(Optional.of(Order.PAUSE_OR_GO_ON), Strokes.typed(typed('.')));
    }

    @Test
    void keysForTheSystemAreLeftToIt() {
        assertEquals(Optional.empty(), Strokes.pressed(pressed(KeyEvent.VK_LEFT, KeyEvent.ALT_DOWN_MASK)));
        assertEquals(Optional.empty(), Strokes.typed(typed('\b')));
    }
}
