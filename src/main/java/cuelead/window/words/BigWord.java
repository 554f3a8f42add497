package cuelead.window.words;

import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;

/** A word as large as its place allows, and while it is to be said in the colour of what is now. */
final class BigWord extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final double LARGEST = 220;

    private transient Palette palette = Palette.DARK;
    private String word = "";
    private boolean isNow;

    BigWord() {
        setPreferredSize(new Dimension(420, 150));
        setMinimumSize(new Dimension(120, 60));
    }

    void show(String shown, boolean now) {
        word = shown;
        isNow = now;
        getAccessibleContext().setAccessibleName(shown);
        repaint();
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics on) {
        super.paintComponent(on); // or the word before stays below this one
        Graphics2D copy = (Graphics2D) on.create();
        copy.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        double size = Math.min(LARGEST, getHeight() / 1.25);
        Lettering.Set line =
                Lettering.line(word, Lettering.Weight.BOLD, size, 12, getWidth() - 8.0, copy.getFontRenderContext());
        copy.setColor(isNow ? palette.now() : palette.ink());
        line.draw(copy, 2, (getHeight() - line.height(copy.getFontRenderContext())) / 2);
        copy.dispose();
    }
}
