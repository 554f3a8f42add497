package cuelead.window.floor;

import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.OptionalInt;

/**
 * Draws the floor view: the room at the left, what is called in the largest letters that fit beside it, and the wall with what
 * comes at its end below. All sizes are parts of the view's height, so that it is read at the same distance whatever the
 * screen's resolution.
 *
 * <p>Letters: people of ordinary sight read letters that stand 5 minutes of arc high with effort (the line of acuity 1.0 on
 * an eye chart); ISO 9241-303 asks for at least 16 minutes, and 20 to 22 for ease. At 6 m 20 minutes are 35 mm. A screen
 * of 14 inches (16 : 9) is 174 mm high, so a capital of {@link #CALL} (capitals are about 0.7 of a size) stands 36 mm high.
 */
final class FloorPainter {
    /** Parts of the view's height. */
    static final double CALL = 0.30;

    private static final double NEXT = 0.14;
    private static final double PLACE = 0.06;
    private static final double SMALL = 0.036;
    private static final double MARGIN = 0.04;
    private static final double ROOM = 0.66;
    private static final double BLOCKS = 0.085;
    /** The room takes at most so much of the width. */
    private static final double WIDEST_ROOM = 0.37;

    private final Palette palette;
    private final FloorPlan plan;

    FloorPainter(Palette palette, FloorPlan.Motion motion) {
        this.palette = palette;
        plan = new FloorPlan(palette, motion);
    }

    /** Draws what moves within a beat, over the rest. */
    void paintMoving(Graphics2D on, int width, int height, FloorScene scene) {
        smooth(on);
        plan.paintCount(on, room(width, height), scene);
    }

    /** Draws what is waited for, while nothing is danced. */
    void paintWaiting(Graphics2D on, int width, int height, String what) {
        smooth(on);
        on.setColor(palette.quiet());
        Lettering.Set words = Lettering.line(
                what, Lettering.Weight.PLAIN, height * PLACE, height * SMALL, width * 0.9, on.getFontRenderContext());
        words.draw(on, width * 0.05, height * 0.4);
    }

    private static void smooth(Graphics2D on) {
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    private static Rectangle2D room(int width, int height) {
        double margin = height * MARGIN;
        double room = Math.min(height * (ROOM - 0.02), width * WIDEST_ROOM);
        return new Rectangle2D.Double(margin, margin * 0.7, room, height * (ROOM + 0.03));
    }

    /** What does not move within a beat, in parts that change at different times. */
    enum Region {
        ROOM,
        WORDS,
        WALL;

        /** All that is shown there. */
        List<Object> shown(FloorScene scene) {
            return switch (this) {
                case ROOM -> List.of(scene.counts(), scene.count(), scene.degrees());
                case WORDS ->
                    List.of(scene.call(), scene.next(), scene.wall(), scene.facing(), scene.section(), scene.heading());
                case WALL -> List.of(scene.blocks(), scene.block(), scene.wallEnd(), scene.state(), scene.notice());
            };
        }
    }

    /** Draws all that does not move. */
    void paintStill(Graphics2D on, int width, int height, FloorScene scene) {
        on.setColor(palette.ground());
        on.fillRect(0, 0, width, height);
        for (Region region : Region.values()) {
            paint(region, on, width, height, scene);
        }
    }

    /** Draws one region over whatever was there. */
    void paint(Region region, Graphics2D on, int width, int height, FloorScene scene) {
        smooth(on);
        double margin = height * MARGIN;
        Rectangle2D room = room(width, height);
        // whole pixels, so that no seam is seen between regions
        int left = (int) Math.round(room.getMaxX() + margin * 1.2);
        int wallTop = (int) Math.round(wallPlace(width, height).getY());
        on.setColor(palette.ground());
        switch (region) {
            case ROOM -> {
                on.fillRect(0, 0, left, wallTop);
                plan.paint(on, room, scene);
            }
            case WORDS -> {
                on.fillRect(left, 0, width - left, wallTop);
                Rectangle2D place = new Rectangle2D.Double(left, margin, width - left - margin, height * (ROOM + 0.04));
                words(on, place, height, scene);
            }
            case WALL -> {
                on.fillRect(0, wallTop, width, height - wallTop);
                wall(on, wallPlace(width, height), height, scene);
            }
        }
    }

    /** Where, what now, what then. */
    private void words(Graphics2D on, Rectangle2D place, double height, FloorScene scene) {
        FontRenderContext context = on.getFontRenderContext();
        double y = place.getY();
        y += line(on, where(scene), Lettering.Weight.BOLD, height * PLACE, palette.ink(), place, y);
        y += line(on, section(scene), Lettering.Weight.PLAIN, height * PLACE, palette.quiet(), place, y);
        double bottom = place.getMaxY();
        double next = height * NEXT * 1.3;
        Lettering.Set call = Lettering.lines(
                scene.call(), Lettering.Weight.BOLD, height * CALL, 2, place.getWidth(), bottom - next - y, context);
        on.setColor(palette.now());
        call.draw(on, place.getX(), y + Math.max(0, (bottom - next - y - call.height(context)) / 2));
        if (!scene.next().isEmpty()) {
            double width = next(on, place.getX(), bottom - next, next);
            Lettering.Set then = Lettering.line(
                    scene.next(),
                    Lettering.Weight.BOLD,
                    height * NEXT,
                    height * SMALL,
                    place.getWidth() - width,
                    context);
            on.setColor(palette.next());
            then.draw(on, place.getX() + width, bottom - next + (next - then.height(context)) / 2);
        }
    }

    /** The sign of what comes then, so that colour alone need not tell; gives how wide it is. */
    private double next(Graphics2D on, double x, double y, double height) {
        double sign = height * 0.34;
        on.setColor(palette.next());
        double middle = y + height / 2;
        for (int stroke = 0; stroke < 2; stroke++) {
            Path2D arrow = new Path2D.Double();
            double from = x + stroke * sign * 0.45;
            arrow.moveTo(from, middle - sign / 2);
            arrow.lineTo(from + sign * 0.4, middle);
            arrow.lineTo(from, middle + sign / 2);
            on.setStroke(new BasicStroke((float) (sign * 0.18)));
            on.draw(arrow);
        }
        return sign * 1.35;
    }

    private static String where(FloorScene scene) {
        return scene.facing().isEmpty() ? scene.wall() : scene.wall() + ", facing " + scene.facing();
    }

    private static String section(FloorScene scene) {
        return scene.heading().isEmpty() ? scene.section() : (scene.section() + "  " + scene.heading()).strip();
    }

    /** Gives how high it is. */
    private double line(
            Graphics2D on,
            String words,
            Lettering.Weight weight,
            double size,
            Color colour,
            Rectangle2D place,
            double y) {
        FontRenderContext context = on.getFontRenderContext();
        Lettering.Set set = Lettering.line(words, weight, size, size * 0.6, place.getWidth(), context);
        on.setColor(colour);
        set.draw(on, place.getX(), y);
        return size * 1.25;
    }

    private static Rectangle2D wallPlace(int width, int height) {
        double margin = height * MARGIN;
        double top = height * (ROOM + 0.04) + margin * 1.4;
        return new Rectangle2D.Double(margin, top, width - 2 * margin, height - top - margin * 0.6);
    }

    /** How many sections on from the one that is danced lies the one that is drawn at a point; empty where none is. */
    OptionalInt sectionsTo(Point2D point, int width, int height, FloorScene scene) {
        Rectangle2D place = wallPlace(width, height);
        boolean isWithin = point.getY() >= place.getY()
                && point.getY() < place.getY() + height * BLOCKS
                && point.getX() >= place.getX()
                && scene.block() >= 0;
        double x = place.getX();
        int all = scene.blocks().stream().mapToInt(FloorScene.Block::counts).sum();
        for (int i = 0; isWithin && i < scene.blocks().size(); i++) {
            x += place.getWidth() * scene.blocks().get(i).counts() / Math.max(1, all);
            if (point.getX() < x) {
                return OptionalInt.of(i - scene.block());
            }
        }
        return OptionalInt.empty();
    }

    private void wall(Graphics2D on, Rectangle2D place, double height, FloorScene scene) {
        double y = place.getY();
        if (!scene.blocks().isEmpty()) {
            blocks(on, new Rectangle2D.Double(place.getX(), y, place.getWidth(), height * BLOCKS), scene);
            y += height * BLOCKS + height * 0.012;
        }
        y += line(on, scene.wallEnd(), Lettering.Weight.BOLD, height * SMALL * 1.25, palette.ink(), place, y);
        String below = scene.notice().isEmpty() ? String.join("   ·   ", scene.state()) : scene.notice();
        line(
                on,
                below,
                Lettering.Weight.PLAIN,
                height * SMALL,
                scene.notice().isEmpty() ? palette.quiet() : palette.next(),
                place,
                y);
    }

    private void blocks(Graphics2D on, Rectangle2D place, FloorScene scene) {
        int all = scene.blocks().stream().mapToInt(FloorScene.Block::counts).sum();
        double gap = place.getHeight() * 0.1;
        double x = place.getX();
        for (int i = 0; i < scene.blocks().size(); i++) {
            FloorScene.Block block = scene.blocks().get(i);
            double width = place.getWidth() * block.counts() / Math.max(1, all);
            double arc = place.getHeight() * 0.2;
            RoundRectangle2D shape =
                    new RoundRectangle2D.Double(x, place.getY(), Math.max(1, width - gap), place.getHeight(), arc, arc);
            boolean isNow = i == scene.block();
            on.setColor(isNow ? palette.now() : palette.field());
            on.fill(shape);
            on.setColor(isNow ? palette.ground() : palette.quiet());
            Lettering.Set name = Lettering.line(
                    block.name(),
                    isNow ? Lettering.Weight.BOLD : Lettering.Weight.PLAIN,
                    place.getHeight() * 0.62,
                    place.getHeight() * 0.3,
                    Math.max(1, width - gap - arc),
                    on.getFontRenderContext());
            name.draw(on, x + arc / 2, place.getY() + place.getHeight() * 0.12);
            x += width;
        }
    }
}
