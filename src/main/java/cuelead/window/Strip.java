package cuelead.window;

import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Insets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The names of the pages, counted, along the top, and the dance in hand before them. */
final class Strip extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel dance = new JLabel();
    private final Map<PageName, Leaf> leaves = new EnumMap<>(PageName.class);
    private PageName front = PageName.DANCE;
    private transient Palette palette = Palette.DARK;

    /** @param turn is given the page that is wanted */
    Strip(Set<PageName> pages, Consumer<PageName> turn) {
        setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
        setBorder(BorderFactory.createEmptyBorder(6, 28, 2, 16));
        dance.setFont(dance.getFont().deriveFont(Font.BOLD, dance.getFont().getSize2D() * 1.25f));
        dance.setMinimumSize(new Dimension(40, 10));
        add(dance);
        add(Box.createHorizontalGlue());
        add(Box.createHorizontalStrut(16));
        for (PageName page : pages) {
            Leaf leaf = new Leaf(page);
            leaf.addActionListener(pressed -> turn.accept(page));
            leaves.put(page, leaf);
            add(leaf);
        }
    }

    void dance(String title) {
        dance.setText(title);
    }

    void front(PageName page) {
        front = page;
        repaint();
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    /** One name; that of the page in front stands on a line. */
    private final class Leaf extends JButton {
        private static final long serialVersionUID = 1L;

        private final PageName page;

        Leaf(PageName page) {
            super(page.number() + "  " + page.word());
            this.page = page;
            setContentAreaFilled(false);
            setBorderPainted(false);
            setMargin(new Insets(8, 10, 10, 10));
            setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
            setToolTipText("Control and " + page.number());
            getAccessibleContext().setAccessibleName("Turn to the page " + page.word());
        }

        @Override
        protected void paintComponent(Graphics on) {
            boolean isFront = page == front;
            setForeground(isFront ? palette.ink() : palette.quiet());
            super.paintComponent(on);
            if (isFront) {
                on.setColor(palette.now());
                on.fillRect(10, getHeight() - 6, getWidth() - 20, 4);
            }
        }
    }
}
