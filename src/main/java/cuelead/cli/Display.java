package cuelead.cli;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;

/** The display of this computer. Apart from all else, for no command but the window needs what it loads. */
final class Display {
    private Display() {}

    /** Whether a window can be opened. */
    static boolean isThere() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException unreachable) {
            return false; // named, but nobody answers
        }
    }
}
