package cuelead.window.words;

import cuelead.window.frame.Palette;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import javax.swing.AbstractAction;
import javax.swing.JPanel;
import javax.swing.KeyStroke;

/** Shows a take; its mark is drawn along by hand. Used on the thread of events. */
final class TakeView extends JPanel {
    private static final long serialVersionUID = 1L;

    /** As far as keys move the mark. */
    static final double STEP_SECONDS = 0.005;

    private static final double LARGE_SECONDS = 0.02;

    private transient TakePainter painter = new TakePainter(Palette.DARK);
    private transient Optional<TakeShape> shape = Optional.empty();
    private transient OptionalDouble mark = OptionalDouble.empty();
    private transient OptionalDouble drawn = OptionalDouble.empty();

    /**
     * With no take.
     *
     * @param moved  is given the moment at which the mark was let go, in seconds of the take
     * @param nudged is given by how many seconds keys move it
     */
    TakeView(DoubleConsumer moved, DoubleConsumer nudged) {
        setFocusable(true);
        key(KeyEvent.VK_LEFT, -STEP_SECONDS, nudged);
        key(KeyEvent.VK_RIGHT, STEP_SECONDS, nudged);
        key(KeyEvent.VK_DOWN, -LARGE_SECONDS, nudged);
        key(KeyEvent.VK_UP, LARGE_SECONDS, nudged);
        setPreferredSize(new Dimension(420, 84));
        setMinimumSize(new Dimension(120, 60));
        getAccessibleContext().setAccessibleName("The take, with the mark where the word is felt");
        MouseAdapter hand = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent at) {
                requestFocusInWindow();
                draw(at);
            }

            @Override
            public void mouseDragged(MouseEvent at) {
                draw(at);
            }

            @Override
            public void mouseReleased(MouseEvent at) {
                OptionalDouble last = drawn;
                drawn = OptionalDouble.empty();
                last.ifPresent(moved);
            }
        };
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent now) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent now) {
                repaint();
            }
        });
        addMouseListener(hand);
        addMouseMotionListener(hand);
    }

    private void key(int code, double laterSeconds, DoubleConsumer nudged) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code, 0);
        getInputMap().put(stroke, stroke.toString());
        getActionMap().put(stroke.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                nudged.accept(laterSeconds);
            }
        });
    }

    private void draw(MouseEvent at) {
        if (mark.isPresent() && shape.isPresent()) {
            drawn = OptionalDouble.of(TakePainter.secondsAt(at.getX(), getWidth(), shape.get()));
            repaint();
        }
    }

    void show(Optional<TakeShape> take, OptionalDouble markSeconds) {
        shape = take;
        mark = markSeconds;
        setCursor(mark.isPresent() ? Cursor.getPredefinedCursor(Cursor.E_RESIZE_CURSOR) : Cursor.getDefaultCursor());
        repaint();
    }

    void look(Palette palette) {
        painter = new TakePainter(palette);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics on) {
        Graphics2D copy = (Graphics2D) on.create();
        copy.setColor(painter.palette().field());
        copy.fillRect(0, 0, getWidth(), getHeight());
        shape.ifPresent(take -> painter.paint(copy, getWidth(), getHeight(), take, drawn.isPresent() ? drawn : mark));
        if (isFocusOwner()) {
            copy.setColor(painter.palette().now());
            copy.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
        copy.dispose();
    }
}
