package cuelead.window.rehearse;

import cuelead.studio.RehearsalScene;
import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JPanel;

/** Shows the latest moment of a rehearsal, whoever brings it. */
final class PromptView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient AtomicReference<Optional<RehearsalScene>> scene = new AtomicReference<>(Optional.empty());
    private transient PromptPainter painter = new PromptPainter(Palette.DARK);

    PromptView() {
        setPreferredSize(new Dimension(400, 300));
        setMinimumSize(new Dimension(200, 150));
        getAccessibleContext().setAccessibleName("What to call");
    }

    /** On any thread; painted only where something that is read has changed. */
    void show(Optional<RehearsalScene> latest) {
        Optional<RehearsalScene> before = scene.getAndSet(latest);
        if (!read(before).equals(read(latest))) {
            repaint();
        }
    }

    private static String read(Optional<RehearsalScene> scene) {
        return scene.map(now -> PromptPainter.place(now) + now.prompted() + now.then())
                .orElse("");
    }

    void look(Palette palette) {
        painter = new PromptPainter(palette);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics on) {
        Graphics2D copy = (Graphics2D) on.create();
        painter.paint(copy, getWidth(), getHeight(), scene.get());
        copy.dispose();
    }
}
