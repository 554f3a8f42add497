package cuelead.window.floor;

import cuelead.steer.Order;
import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Optional;

/** What keys ask for: those of the terminal, and a presenter's clicker. */
final class Strokes {
    private static final Map<Integer, String> NAMED = Map.of(
            KeyEvent.VK_LEFT, "left",
            KeyEvent.VK_RIGHT, "right",
            KeyEvent.VK_UP, "up",
            KeyEvent.VK_DOWN, "down",
            KeyEvent.VK_PAGE_UP, "page up",
            KeyEvent.VK_PAGE_DOWN, "page down",
            KeyEvent.VK_HOME, "home",
            KeyEvent.VK_ENTER, "enter");

    private Strokes() {}

    /** Of a key that goes down and types nothing. */
    static Optional<Order> pressed(KeyEvent key) {
        return isPlain(key) ? Optional.ofNullable(NAMED.get(key.getKeyCode())).flatMap(Order::by) : Optional.empty();
    }

    /** Of a letter that is typed. */
    static Optional<Order> typed(KeyEvent key) {
        boolean isLetter = isPlain(key) && !Character.isISOControl(key.getKeyChar());
        return isLetter ? Order.by(String.valueOf(key.getKeyChar())) : Optional.empty();
    }

    private static boolean isPlain(KeyEvent key) {
        return !key.isControlDown() && !key.isAltDown() && !key.isMetaDown();
    }
}
