package cuelead.window.rehearse;

import cuelead.rehearse.PlannedCall;
import cuelead.steer.Told;
import cuelead.studio.RehearsalScene;
import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws what is to be called: where the dance is, the call to breathe for in the largest letters that fit, with the count
 * that it is for, and the one after it behind the double arrow, as on the floor. All sizes are parts of the height.
 */
final class PromptPainter {
    private static final double MARGIN = 0.05;
    private static final double PLACE = 0.10;
    private static final double CALL = 0.42;
    private static final double NEXT = 0.17;
    private static final double SMALLEST = 0.05;

    private final Palette palette;

    PromptPainter(Palette palette) {
        this.palette = palette;
    }

    /** Draws a moment; nothing but the ground before there is one. */
    void paint(Graphics2D on, int width, int height, Optional<RehearsalScene> scene) {
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        on.setColor(palette.ground());
        on.fillRect(0, 0, width, height);
        scene.ifPresent(now -> paint(on, width, height, now));
    }

    private void paint(Graphics2D on, int width, int height, RehearsalScene scene) {
        double margin = height * MARGIN;
        double inner = width - 2 * margin;
        line(on, place(scene), Lettering.Weight.BOLD, palette.ink(), margin, margin, inner, height * PLACE);
        double top = margin + 1.5 * PLACE * height;
        double bottom = height - margin - 1.4 * NEXT * height;
        scene.prompted().ifPresent(call -> {
            FontRenderContext context = on.getFontRenderContext();
            double forCount = height * PLACE * 0.8;
            Lettering.Set word = Lettering.lines(
                    call.word(),
                    Lettering.Weight.BOLD,
                    height * CALL,
                    2,
                    inner,
                    bottom - top - 1.3 * forCount,
                    context);
            on.setColor(palette.now());
            double y = top + Math.max(0, (bottom - top - 1.3 * forCount - word.height(context)) / 2);
            word.draw(on, margin, y);
            line(
                    on,
                    target(call),
                    Lettering.Weight.PLAIN,
                    palette.quiet(),
                    margin,
                    bottom - 1.2 * forCount,
                    inner,
                    forCount);
        });
        scene.then().ifPresent(call -> {
            double sign = arrow(on, margin, bottom, height * NEXT * 1.3);
            line(
                    on,
                    call.word(),
                    Lettering.Weight.BOLD,
                    palette.next(),
                    margin + sign,
                    bottom + 0.1 * NEXT * height,
                    inner - sign,
                    height * NEXT);
        });
    }

    /** {@code Wall 2, section 3}; before the dance only the place in the song. */
    static String place(RehearsalScene scene) {
        List<String> parts = new ArrayList<>();
        if (scene.place().wall() > 0) {
            parts.add("Wall " + scene.place().wall());
        }
        if (!scene.place().section().isEmpty()) {
            parts.add(scene.place().section());
        }
        parts.add(Told.minutesAndSeconds(scene.songSeconds()));
        return String.join("   ", parts);
    }

    /** {@code for count 3}; nothing where the count is not known. */
    static String target(PlannedCall call) {
        return call.count().isEmpty() ? "" : "for count " + call.count();
    }

    private static void line(
            Graphics2D on,
            String words,
            Lettering.Weight weight,
            Color colour,
            double x,
            double y,
            double width,
            double size) {
        on.setColor(colour);
        Lettering.line(words, weight, size, size * SMALLEST / PLACE, width, on.getFontRenderContext())
                .draw(on, x, y);
    }

    /** The sign of what comes then; gives how wide it is. */
    private double arrow(Graphics2D on, double x, double y, double height) {
        double sign = height * 0.34;
        double middle = y + height / 2;
        on.setColor(palette.next());
        on.setStroke(new BasicStroke((float) (sign * 0.18)));
        for (int stroke = 0; stroke < 2; stroke++) {
            double from = x + stroke * sign * 0.45;
            Path2D arrow = new Path2D.Double();
            arrow.moveTo(from, middle - sign / 2);
            arrow.lineTo(from + sign * 0.4, middle);
            arrow.lineTo(from, middle + sign / 2);
            on.draw(arrow);
        }
        return sign * 1.35;
    }
}
