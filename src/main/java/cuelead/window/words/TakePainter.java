package cuelead.window.words;

import cuelead.window.frame.Palette;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.OptionalDouble;

/** Draws a take: how loud it is from moment to moment, and the mark where it is felt. */
record TakePainter(Palette palette) {
    private static final double MARK_WIDTH = 3;

    /**
     * Draws it into a place of its own.
     *
     * @param markSeconds where it is felt, where that is known
     */
    void paint(Graphics2D on, int width, int height, TakeShape shape, OptionalDouble markSeconds) {
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setColor(palette.field());
        on.fillRect(0, 0, width, height);
        on.setColor(palette.quiet());
        on.fill(outline(width, height, shape));
        if (markSeconds.isPresent()) {
            double x = xAt(markSeconds.getAsDouble(), width, shape);
            on.setColor(palette.now());
            on.setStroke(new BasicStroke((float) MARK_WIDTH));
            on.draw(new Line2D.Double(x, 0, x, height));
            on.fill(handle(x, height));
        }
    }

    private static Path2D outline(int width, int height, TakeShape shape) {
        Path2D outline = new Path2D.Double();
        double middle = height / 2.0;
        double tall = 0.46 * height;
        outline.moveTo(0, middle);
        for (int part = 0; part < shape.parts(); part++) {
            outline.lineTo((part + 0.5) * width / shape.parts(), middle - Math.max(0.5, tall * shape.peak(part)));
        }
        outline.lineTo(width, middle);
        for (int part = shape.parts() - 1; part >= 0; part--) {
            outline.lineTo((part + 0.5) * width / shape.parts(), middle + Math.max(0.5, tall * shape.peak(part)));
        }
        outline.closePath();
        return outline;
    }

    /** What a hand takes hold of. */
    private static Path2D handle(double x, int height) {
        double size = Math.min(14, height / 6.0);
        Path2D handle = new Path2D.Double();
        handle.moveTo(x - size, 0);
        handle.lineTo(x + size, 0);
        handle.lineTo(x, 1.3 * size);
        handle.closePath();
        return handle;
    }

    static double xAt(double seconds, int width, TakeShape shape) {
        return width * seconds / shape.seconds();
    }

    /** The moment at a place, within the take. */
    static double secondsAt(double x, int width, TakeShape shape) {
        return shape.seconds() * Math.max(0, Math.min(1, x / Math.max(1, width)));
    }
}
