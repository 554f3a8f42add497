package cuelead.window.sheet;

import cuelead.report.Problem;
import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/**
 * Beside the lines of a sheet: their numbers, and a mark where something was found. A mistake is a triangle, a warning a
 * diamond, a note a point: no mark tells anything by its colour alone.
 */
final class Margin extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final int MARK = 12;
    private static final int GAP = 6;

    private final SheetText text;
    private transient Palette palette;
    private transient Map<Integer, Problem.Severity> marks = Map.of();

    /** @param pressed is given the line, from 1, of a mark that is pressed */
    Margin(SheetText text, Palette palette, IntConsumer pressed) {
        this.text = text;
        this.palette = palette;
        setFont(text.getFont().deriveFont(text.getFont().getSize2D() * 0.85f));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                marks.keySet().stream()
                        .filter(line -> text.placeOf(line).contains(0, event.getY()))
                        .findFirst()
                        .ifPresent(pressed::accept);
            }
        });
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    /** Marks the lines of findings; of several the worst. */
    void show(List<Finding> findings) {
        TreeMap<Integer, Problem.Severity> worst = new TreeMap<>();
        for (Finding finding : findings) {
            worst.merge(
                    finding.shownLine(), finding.severity(), (one, other) -> one.compareTo(other) < 0 ? one : other);
        }
        marks = worst;
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics letters = getFontMetrics(getFont());
        return new Dimension(letters.stringWidth("000") + MARK + 3 * GAP, text.getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D on = (Graphics2D) graphics.create();
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        on.setColor(palette.ground());
        on.fillRect(0, 0, getWidth(), getHeight());
        on.setFont(getFont());
        FontMetrics letters = on.getFontMetrics();
        int ascent = text.getFontMetrics(text.getFont()).getAscent();
        Rectangle seen = graphics.getClipBounds();
        for (int line = text.lineAt(seen.y); line <= text.getLineCount(); line++) {
            Rectangle place = text.placeOf(line);
            if (place.y > seen.getMaxY()) {
                break;
            }
            String number = String.valueOf(line);
            on.setColor(line == text.marked() ? palette.ink() : palette.quiet());
            on.drawString(number, getWidth() - GAP - letters.stringWidth(number), place.y + ascent);
            mark(on, line, place.y + ascent);
        }
        on.dispose();
    }

    private void mark(Graphics2D on, int line, int base) {
        Problem.Severity severity = marks.get(line);
        if (severity == null) {
            return;
        }
        int x = GAP;
        int middle = x + MARK / 2;
        on.setColor(severity == Problem.Severity.NOTE ? palette.next() : palette.now());
        switch (severity) {
            case ERROR -> on.fill(new Polygon(new int[] {x, middle, x + MARK}, new int[] {base, base - MARK, base}, 3));
            case WARNING ->
                on.fill(new Polygon(
                        new int[] {x, middle, x + MARK, middle},
                        new int[] {base - MARK / 2, base - MARK, base - MARK / 2, base},
                        4));
            case NOTE -> on.fillOval(x + MARK / 4, base - MARK * 3 / 4, MARK / 2, MARK / 2);
        }
    }
}
