package cuelead.window.floor;

import cuelead.steer.KeyHelp;
import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** Draws the keys over all of the floor view: in two columns, keys before what they do. */
final class KeySheet {
    private static final double MARGIN = 0.06;
    private static final double KEYS_WIDTH = 0.30;

    /** A line of it. */
    private record Line(String keys, String does) {}

    private KeySheet() {}

    static void paint(Graphics2D on, int width, int height, Palette palette) {
        List<Line> lines = new ArrayList<>(KeyHelp.PRACTICE.lines().stream()
                .map(line -> new Line(String.join("  ", line.keys()), line.does()))
                .toList());
        lines.add(new Line("F11", "all of the screen"));
        lines.add(new Line("F8", "light, dark"));
        lines.add(new Line("F9", "motion on, off"));
        on.setColor(palette.ground());
        on.fillRect(0, 0, width, height);
        int half = (lines.size() + 1) / 2;
        double margin = height * MARGIN;
        double step = (height - 2 * margin) / half;
        double column = (width - 2 * margin) / 2;
        FontRenderContext context = on.getFontRenderContext();
        for (int i = 0; i < lines.size(); i++) {
            double x = margin + (i < half ? 0 : column);
            double y = margin + i % half * step;
            double size = step * 0.6;
            on.setColor(palette.now());
            Lettering.line(
                            lines.get(i).keys(),
                            Lettering.Weight.BOLD,
                            size,
                            size * 0.5,
                            column * KEYS_WIDTH - margin / 4,
                            context)
                    .draw(on, x, y);
            on.setColor(palette.ink());
            Lettering.line(
                            lines.get(i).does(),
                            Lettering.Weight.PLAIN,
                            size,
                            size * 0.5,
                            column * (1 - KEYS_WIDTH) - margin / 2,
                            context)
                    .draw(on, x + column * KEYS_WIDTH, y);
        }
    }
}
