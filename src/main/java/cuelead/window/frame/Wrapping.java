package cuelead.window.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;

/** Lays the components of one place side by side in lines as long as it allows, each line as high as its highest. */
public final class Wrapping implements LayoutManager {
    private final int gap;
    private int laidWidth;

    /**
     * With a distance between all of them.
     *
     * @param gap in pixels of the layout
     */
    public Wrapping(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(String name, Component part) {}

    @Override
    public void removeLayoutComponent(Component part) {}

    @Override
    public Dimension preferredLayoutSize(Container place) {
        return laid(place, false);
    }

    @Override
    public Dimension minimumLayoutSize(Container place) {
        return new Dimension(10, preferredLayoutSize(place).height);
    }

    /**
     * Whoever lays the place asks for its height before it has a width, and gives it that of one line; so the place asks to
     * be laid again, once for each width.
     */
    @Override
    public void layoutContainer(Container place) {
        int height = laid(place, true).height;
        boolean isNewWidth = place.getWidth() != laidWidth;
        laidWidth = place.getWidth();
        if (isNewWidth && height != place.getHeight()) {
            EventQueue.invokeLater(place::revalidate);
        }
    }

    /** The width is that of the place, once it has one. */
    private Dimension laid(Container place, boolean isMoved) {
        Insets border = place.getInsets();
        int right = (place.getWidth() > 0 ? place.getWidth() : Integer.MAX_VALUE) - border.right;
        int y = border.top;
        int widest = 0;
        List<Component> line = new ArrayList<>();
        int x = border.left;
        for (Component part : place.getComponents()) {
            int width = part.getPreferredSize().width;
            if (part.isVisible() && !line.isEmpty() && x + width > right) {
                y += line(line, border.left, y, isMoved) + gap;
                line.clear();
                x = border.left;
            }
            if (part.isVisible()) {
                line.add(part);
                widest = Math.max(widest, x + width);
                x += width + gap;
            }
        }
        return new Dimension(widest + border.right, y + line(line, border.left, y, isMoved) + border.bottom);
    }

    /** Lays a line, all of its parts about one middle; gives its height. */
    private int line(List<Component> parts, int left, int top, boolean isMoved) {
        int height = parts.stream()
                .mapToInt(part -> part.getPreferredSize().height)
                .max()
                .orElse(0);
        int x = left;
        for (Component part : parts) {
            Dimension size = part.getPreferredSize();
            if (isMoved) {
                part.setBounds(x, top + (height - size.height) / 2, size.width, size.height);
            }
            x += size.width + gap;
        }
        return height;
    }
}
