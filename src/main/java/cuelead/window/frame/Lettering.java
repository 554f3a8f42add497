package cuelead.window.frame;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.util.ArrayList;
import java.util.List;

/** Words as large as their place allows. */
public final class Lettering {
    private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 1);
    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 1);

    /** How thick letters are. */
    public enum Weight {
        BOLD,
        PLAIN
    }

    /**
     * Lines of words in one size.
     *
     * @param lines in order
     * @param font  their size in it
     */
    public record Set(List<String> lines, Font font) {
        public Set {
            lines = List.copyOf(lines);
        }

        public double lineHeight(FontRenderContext context) {
            LineMetrics metrics = font.getLineMetrics("Xy", context);
            return metrics.getAscent() + metrics.getDescent();
        }

        public double height(FontRenderContext context) {
            return lines.size() * lineHeight(context);
        }

        /** Draws them from a left edge and the top of the first line. */
        public void draw(Graphics2D on, double left, double top) {
            FontRenderContext context = on.getFontRenderContext();
            on.setFont(font);
            double baseline = top + font.getLineMetrics("Xy", context).getAscent();
            for (String line : lines) {
                on.drawString(line, (float) left, (float) baseline);
                baseline += lineHeight(context);
            }
        }
    }

    /** Letters of another size are not wide in quite the same ratio. */
    private static final double FITTED = 0.985;

    private Lettering() {}

    /**
     * One line, smaller than asked for only where it is too long; cut where it would become too small to be read.
     *
     * @param size     wished, in pixels
     * @param smallest likewise
     */
    public static Set line(
            String words, Weight weight, double size, double smallest, double width, FontRenderContext context) {
        Font wished = font(weight, size);
        double is = width(words, wished, context);
        double fitting = is <= width ? size : size * FITTED * width / is;
        Font font = font(weight, Math.max(smallest, fitting));
        return new Set(List.of(cut(words, font, width, context)), font);
    }

    /** As many lines, up to {@code mostLines}, as let the words be largest. */
    public static Set lines(
            String words,
            Weight weight,
            double size,
            int mostLines,
            double width,
            double height,
            FontRenderContext context) {
        Set best = line(words, weight, size, 0, width, context);
        for (int count = 2; count <= mostLines; count++) {
            List<String> lines = split(words, count);
            double longest = lines.stream()
                    .mapToDouble(line -> width(line, font(weight, size), context))
                    .max()
                    .orElse(0);
            double fitting =
                    Math.min(size, Math.min(size * width / Math.max(1, longest), height / lines.size() / LINE_HEIGHT));
            if (fitting > best.font().getSize2D()) {
                best = new Set(lines, font(weight, fitting));
            }
        }
        return best;
    }

    /** Of a line, in sizes of its letters. */
    private static final double LINE_HEIGHT = 1.2;

    /** Lines of about the same length. */
    private static List<String> split(String words, int count) {
        List<String> left = new ArrayList<>(List.of(words.split(" ", -1)));
        List<String> lines = new ArrayList<>();
        int target = (words.length() + count - 1) / count;
        StringBuilder line = new StringBuilder();
        for (String word : left) {
            boolean full = line.length() > 0 && line.length() + word.length() / 2 >= target && lines.size() < count - 1;
            if (full) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String cut(String words, Font font, double width, FontRenderContext context) {
        String shown = words;
        while (shown.length() > 1 && width(shown, font, context) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }

    public static double width(String words, Font font, FontRenderContext context) {
        return words.isEmpty() ? 0 : font.getStringBounds(words, context).getWidth();
    }

    public static Font font(Weight weight, double size) {
        return (weight == Weight.BOLD ? BOLD : PLAIN).deriveFont((float) size);
    }
}
