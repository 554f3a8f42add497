package cuelead.window.floor;

import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JPanel;

/** Shows the floor: the latest scene, whoever brings it. */
final class FloorView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient AtomicReference<Optional<FloorScene>> scene = new AtomicReference<>(Optional.empty());
    private transient FloorPainter painter = new FloorPainter(Palette.DARK, FloorPlan.Motion.WITH_THE_BEAT);

    private final transient StillPicture still = new StillPicture();
    private boolean showsKeys;
    private String waiting = "";
    private transient Palette palette = Palette.DARK;

    FloorView() {
        setFocusable(true);
        setOpaque(true);
        getAccessibleContext().setAccessibleName("The floor");
    }

    /**
     * Draws a scene where nobody sees it, beside everything else: the first letters of a size take some hundred times as
     * long as the next ones, and that is over before anything is danced.
     */
    void getReady() {
        Dimension size = getSize();
        FloorPainter first = painter;
        Thread drawing = new Thread(() -> drawUnseen(first, size), "cuelead-first-picture");
        drawing.setDaemon(true);
        drawing.start();
    }

    private static void drawUnseen(FloorPainter painter, Dimension size) {
        int width = Math.max(1, size.width);
        int height = Math.max(1, size.height);
        Graphics2D on = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB).createGraphics();
        for (String call : List.of("walk", "shuffle back", "step turn step turn")) {
            painter.paintStill(on, width, height, FloorScene.sample(call));
            painter.paintMoving(on, width, height, FloorScene.sample(call));
        }
        on.dispose();
    }

    /** Shows a scene from the next painting on. On any thread. */
    void show(FloorScene latest) {
        scene.set(Optional.of(latest));
        repaint();
    }

    /** Shows nothing. On any thread. */
    void clear() {
        scene.set(Optional.empty());
        waiting = "";
        repaint();
    }

    /** Shows a sentence while nothing is danced. */
    void idle(String sentence) {
        if (scene.get().isEmpty()) {
            waiting = sentence;
            repaint();
        }
    }

    /** How many sections on from the one that is danced lies the one that is shown at a point; empty where none is. */
    OptionalInt sectionsTo(Point point) {
        return scene.get()
                .map(shown -> painter.sectionsTo(point, getWidth(), getHeight(), shown))
                .orElse(OptionalInt.empty());
    }

    /** Shows what is being made ready, and how far it is, 0 to 1. */
    void waiting(String work, double done) {
        waiting = work + ", " + Math.round(100 * done) + " %";
        repaint();
    }

    /** Shows the keys over it, or no longer. */
    void keysOrNot() {
        showsKeys = !showsKeys;
        repaint();
    }

    boolean showsKeys() {
        return showsKeys;
    }

    void look(Palette other, FloorPlan.Motion motion) {
        palette = other;
        painter = new FloorPainter(palette, motion);
        still.forget();
        setBackground(palette.ground());
        repaint();
    }

    @Override
    protected void paintComponent(Graphics on) {
        on.setColor(getBackground());
        on.fillRect(0, 0, getWidth(), getHeight());
        if (scene.get().isEmpty()) {
            painter.paintWaiting((Graphics2D) on, getWidth(), getHeight(), waiting);
        }
        scene.get().ifPresent(shown -> {
            Graphics2D copy = (Graphics2D) on.create();
            copy.drawImage(
                    still.of(shown, painter, getSize(), getGraphicsConfiguration()),
                    0,
                    0,
                    getWidth(),
                    getHeight(),
                    null);
            painter.paintMoving(copy, getWidth(), getHeight(), shown);
            if (showsKeys) {
                KeySheet.paint(copy, getWidth(), getHeight(), palette);
            }
            copy.dispose();
        });
    }
}
