package cuelead.window;

import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Optional;
import javax.swing.JFrame;

/** Where a window stands on its screen, when it neither fills it nor is put away. Used on the thread of events. */
final class WindowPlace {
    private final JFrame frame;
    private Rectangle last;

    /** @param before where it stood the last time; the middle of the screen, where that is not to be seen any more */
    WindowPlace(JFrame frame, Optional<Rectangle> before) {
        this.frame = frame;
        Rectangle usable = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setMinimumSize(within(usable, 760, 500));
        frame.setSize(within(usable, 1180, 700));
        frame.setLocationRelativeTo(null);
        before.filter(usable::intersects).ifPresent(frame::setBounds);
        last = frame.getBounds();
        frame.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentMoved(ComponentEvent moved) {
                look();
            }

            @Override
            public void componentResized(ComponentEvent resized) {
                look();
            }
        });
    }

    private static Dimension within(Rectangle usable, int width, int height) {
        return new Dimension(Math.min(usable.width, width), Math.min(usable.height, height));
    }

    private void look() {
        if (!fillsTheScreen() && frame.getExtendedState() == Frame.NORMAL) {
            last = frame.getBounds();
        }
    }

    boolean fillsTheScreen() {
        return screen().getFullScreenWindow() == frame;
    }

    /** Fills the screen, or no longer. */
    void fillTheScreenOrNot() {
        screen().setFullScreenWindow(fillsTheScreen() ? null : frame);
    }

    private GraphicsDevice screen() {
        return frame.getGraphicsConfiguration().getDevice();
    }

    /** The last place of that kind. */
    Rectangle last() {
        return last;
    }
}
