package cuelead.window.floor;

import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The room from above, its front marked: the dancers as they face, and the counts of the eight running round them along
 * the walls, beginning at the left of the front.
 */
final class FloorPlan {
    private static final String FRONT = "FRONT";
    /** All of the following are parts of the room's side. */
    private static final double FRONT_BAR = 0.022;

    private static final double FRONT_WORD = 0.062;
    private static final double WALL = 0.008;
    private static final double RING_INSET = 0.135;
    private static final double NUMBER = 0.105;
    private static final double HALF_NUMBER = 0.065;
    private static final double DISC = 0.165;
    private static final double PULSE = 0.16;
    private static final double ROWS_APART = 0.15;
    private static final double DANCER = 0.085;
    private static final int ROWS = 3;

    private final Palette palette;
    private final Motion motion;

    /** Whether what is danced pulses with the beat. */
    enum Motion {
        WITH_THE_BEAT,
        STILL
    }

    FloorPlan(Palette palette, Motion motion) {
        this.palette = palette;
        this.motion = motion;
    }

    /** Draws all but the count that is danced into the largest square that stands at the top left of a place. */
    void paint(Graphics2D on, Rectangle2D place, FloorScene scene) {
        Rectangle2D room = room(place);
        walls(on, room);
        scene.degrees().ifPresent(degrees -> dancers(on, room, degrees));
        for (int i = 0; i < scene.counts().size(); i++) {
            if (i != scene.count()) {
                on.setColor(palette.quiet());
                number(on, room, scene, i, Lettering.Weight.PLAIN);
            }
        }
    }

    /** Draws the count that is danced where {@link #paint} has left it out: it alone moves within a beat. */
    void paintCount(Graphics2D on, Rectangle2D place, FloorScene scene) {
        if (scene.count() >= 0 && scene.count() < scene.counts().size()) {
            Rectangle2D room = room(place);
            boolean isWhole = isWhole(scene.counts().get(scene.count()));
            disc(on, at(room, scene, scene.count()), room.getWidth() * (isWhole ? DISC : DISC * 0.75), scene);
            on.setColor(palette.ground());
            number(on, room, scene, scene.count(), Lettering.Weight.BOLD);
        }
    }

    private static Rectangle2D room(Rectangle2D place) {
        double side = Math.min(place.getWidth(), place.getHeight() / (1 + FRONT_WORD * 1.5));
        return new Rectangle2D.Double(place.getX(), place.getY() + side * FRONT_WORD * 1.5, side, side);
    }

    private void walls(Graphics2D on, Rectangle2D room) {
        double side = room.getWidth();
        on.setColor(palette.field());
        on.fill(room);
        on.setColor(palette.quiet());
        on.setStroke(new BasicStroke((float) (side * WALL)));
        on.draw(room);
        on.setColor(palette.ink());
        on.fill(new Rectangle2D.Double(room.getX(), room.getY() - side * FRONT_BAR, side, side * FRONT_BAR * 1.6));
        Font font = Lettering.font(Lettering.Weight.BOLD, side * FRONT_WORD);
        centred(on, FRONT, font, room.getCenterX(), room.getY() - side * (FRONT_BAR + FRONT_WORD * 0.62));
    }

    private void dancers(Graphics2D on, Rectangle2D room, int degrees) {
        double side = room.getWidth();
        Path2D dancer = new Path2D.Double();
        dancer.moveTo(0, -0.6);
        dancer.lineTo(0.5, 0.5);
        dancer.lineTo(0, 0.22);
        dancer.lineTo(-0.5, 0.5);
        dancer.closePath();
        on.setColor(palette.ink());
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < ROWS; column++) {
                AffineTransform there = AffineTransform.getTranslateInstance(
                        room.getCenterX() + (column - 1) * side * ROWS_APART,
                        room.getCenterY() + (row - 1) * side * ROWS_APART);
                there.rotate(Math.toRadians(degrees));
                there.scale(side * DANCER, side * DANCER);
                on.fill(there.createTransformedShape(dancer));
            }
        }
    }

    private static void number(Graphics2D on, Rectangle2D room, FloorScene scene, int index, Lettering.Weight weight) {
        String count = scene.counts().get(index);
        Point2D at = at(room, scene, index);
        double size = room.getWidth() * (isWhole(count) ? NUMBER : HALF_NUMBER);
        centred(on, count, Lettering.font(weight, size), at.getX(), at.getY());
    }

    /** Each count has its place, however many half counts are danced between. */
    private static Point2D at(Rectangle2D room, FloorScene scene, int index) {
        List<String> counts = scene.counts();
        int whole = (int) counts.stream().filter(FloorPlan::isWhole).count();
        int passed =
                (int) counts.stream().limit(index).filter(FloorPlan::isWhole).count();
        return alongTheWalls(room, (isWhole(counts.get(index)) ? passed + 0.5 : passed) / Math.max(1.0, whole));
    }

    private static boolean isWhole(String count) {
        return !count.isEmpty() && Character.isDigit(count.charAt(0));
    }

    private void disc(Graphics2D on, Point2D at, double width, FloorScene scene) {
        boolean pulses = motion == Motion.WITH_THE_BEAT && !scene.isStill();
        double wide = width * (pulses ? 1 + PULSE * (1 - scene.beat()) : 1);
        on.setColor(palette.now());
        on.fill(new Ellipse2D.Double(at.getX() - wide / 2, at.getY() - wide / 2, wide, wide));
    }

    /** A part of the way round, 0 to 1, clockwise from the front's left corner. */
    private static Point2D alongTheWalls(Rectangle2D room, double part) {
        double inset = room.getWidth() * RING_INSET;
        double side = room.getWidth() - 2 * inset;
        double way = part * 4;
        int wall = (int) Math.min(3, Math.floor(way));
        double along = (way - wall) * side;
        double left = room.getX() + inset;
        double top = room.getY() + inset;
        return switch (wall) {
            case 0 -> new Point2D.Double(left + along, top);
            case 1 -> new Point2D.Double(left + side, top + along);
            case 2 -> new Point2D.Double(left + side - along, top + side);
            default -> new Point2D.Double(left, top + side - along);
        };
    }

    private static void centred(Graphics2D on, String words, Font font, double x, double y) {
        FontRenderContext context = on.getFontRenderContext();
        Rectangle2D ink = font.createGlyphVector(context, words).getVisualBounds();
        on.setFont(font);
        on.drawString(words, (float) (x - ink.getCenterX()), (float) (y - ink.getCenterY()));
    }
}
