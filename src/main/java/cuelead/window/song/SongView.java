package cuelead.window.song;

import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** Shows the rows of a song. Used on the thread of events. */
final class SongView extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    private transient Optional<Rows> rows = Optional.empty();
    private transient Outline outline = Outline.NONE;
    private transient Selected selected = Selected.FIRST;
    private transient OptionalInt playing = OptionalInt.empty();
    private transient Palette palette = Palette.DARK;

    SongView() {
        setFocusable(true);
        getAccessibleContext().setAccessibleName("The rows of the song");
    }

    void show(Rows other) {
        rows = Optional.of(other);
        revalidate();
        repaint();
    }

    void show(Outline song) {
        outline = song;
        repaint();
    }

    /** Shows nothing. */
    void clear() {
        rows = Optional.empty();
        outline = Outline.NONE;
        playing = OptionalInt.empty();
        selected = Selected.FIRST;
        revalidate();
        repaint();
    }

    Optional<Rows> rows() {
        return rows;
    }

    Selected selected() {
        return selected;
    }

    /** Selects, and moves there where it is not to be seen. */
    void select(Selected other) {
        selected = other;
        see(other.beat());
        repaint();
    }

    /** Lights the beat that is heard; empty = none. */
    void playing(OptionalInt beat) {
        if (!beat.equals(playing)) {
            OptionalInt before = playing;
            playing = beat;
            before.ifPresent(this::repaintCell);
            beat.ifPresent(now -> {
                repaintCell(now);
                see(now);
            });
        }
    }

    private void repaintCell(int beat) {
        layoutNow().filter(laid -> beat < laid.rows().beats()).ifPresent(laid -> repaint(laid.cellOf(beat)));
    }

    /** With the row behind it, so that one sees what comes. */
    private void see(int beat) {
        layoutNow().filter(laid -> beat < laid.rows().beats()).ifPresent(laid -> {
            Rectangle row = laid.row(laid.rows().rowOf(beat));
            row.height += laid.height();
            row.width = Math.min(row.width, getWidth());
            scrollRectToVisible(row);
        });
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    /** The beat at a place; empty where there is none. */
    OptionalInt beatAt(int x, int y) {
        return layoutNow().map(laid -> laid.beatAt(x, y)).orElse(OptionalInt.empty());
    }

    private Optional<RowLayout> layoutNow() {
        return rows.map(all -> RowLayout.of(all, getWidth(), em()));
    }

    private int em() {
        return getFontMetrics(getFont()).getHeight();
    }

    @Override
    protected void paintComponent(Graphics on) {
        on.setColor(palette.ground());
        on.fillRect(0, 0, getWidth(), getHeight());
        Graphics2D copy = (Graphics2D) on.create();
        layoutNow()
                .ifPresent(laid -> new SongLook(palette, getFont())
                        .paint(copy, new SongLook.Scene(laid, outline, selected, playing), copy.getClipBounds()));
        copy.dispose();
    }

    @Override
    public Dimension getPreferredSize() {
        return rows.map(all -> new Dimension(
                        10, RowLayout.of(all, Math.max(10, getWidth()), em()).totalHeight()))
                .orElse(new Dimension(10, 10));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return layoutNow().map(RowLayout::height).orElse(1);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(1, visible.height - getScrollableUnitIncrement(visible, orientation, direction));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return rows.isEmpty();
    }
}
