package cuelead.window.song;

import cuelead.steer.Told;
import cuelead.window.frame.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.OptionalInt;

/** Paints the rows of a song. What is told by a colour is also told by a shape or in words. */
final class SongLook {
    private static final int STRIP_PARTS = 3;
    private static final int OUTLINE_PIXELS = 2;

    private final Palette palette;
    private final Font usual;

    /** @param usual the letters of usual controls */
    SongLook(Palette palette, Font usual) {
        this.palette = palette;
        this.usual = usual;
    }

    /**
     * What is shown.
     *
     * @param playing the beat that is heard; empty while nothing is
     */
    record Scene(RowLayout layout, Outline outline, Selected selected, OptionalInt playing) {}

    void paint(Graphics2D on, Scene scene, Rectangle clip) {
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        RowLayout layout = scene.layout();
        int first = Math.max(0, clip.y / layout.height());
        int last = Math.min(layout.rows().rows().size() - 1, (clip.y + clip.height) / layout.height());
        for (int row = first; row <= last; row++) {
            row(on, scene, row);
        }
    }

    private void row(Graphics2D on, Scene scene, int index) {
        RowLayout layout = scene.layout();
        Row row = layout.rows().rows().get(index);
        Rectangle at = layout.row(index);
        if (row.opens()) {
            on.setColor(palette.quiet());
            on.fillRect(at.x, at.y - RowLayout.GAP / 2 - 1, layout.place() - 8, 1);
        }
        on.setFont(usual.deriveFont(row.opens() ? Font.BOLD : Font.PLAIN));
        boolean hasSecondLine = !row.facing().isEmpty();
        int half = at.height / 2;
        on.setColor(palette.ink());
        text(on, row.place(), new Rectangle(at.x, at.y, layout.place() - 8, half), 0);
        on.setFont(usual);
        on.setColor(palette.quiet());
        String below = Told.minutes(row.first().seconds()) + (hasSecondLine ? "  facing " + row.facing() : "");
        text(on, below, new Rectangle(at.x, at.y + half, layout.place() - 8, half), 0);
        for (Cell cell : row.cells()) {
            cell(on, scene, cell);
        }
        notes(on, layout.notesOf(index), row);
    }

    private void notes(Graphics2D on, Rectangle at, Row row) {
        Rectangle upper = new Rectangle(at.x + 12, at.y, at.width - 12, at.height / 2);
        Rectangle lower = new Rectangle(upper.x, at.y + at.height / 2, upper.width, at.height / 2);
        String notes = String.join(". ", row.notes());
        on.setFont(usual);
        on.setColor(palette.quiet());
        if (notes.isEmpty()) {
            inTwoLines(on, row.words(), upper, lower);
        } else {
            text(on, row.words(), lower, 0);
        }
        on.setFont(usual.deriveFont(Font.BOLD));
        on.setColor(palette.now());
        text(on, notes, upper, 0);
    }

    private static void inTwoLines(Graphics2D on, String words, Rectangle upper, Rectangle lower) {
        FontMetrics letters = on.getFontMetrics();
        int end = words.length();
        while (end > 0 && letters.stringWidth(words.substring(0, end)) > upper.width) {
            end = words.lastIndexOf(' ', end - 1);
        }
        if (end <= 0 || end == words.length()) {
            text(on, words, new Rectangle(upper.x, upper.y, upper.width, 2 * upper.height), 0);
        } else {
            text(on, words.substring(0, end), upper, 0);
            text(on, words.substring(end).strip(), lower, 0);
        }
    }

    private void cell(Graphics2D on, Scene scene, Cell cell) {
        Rectangle at = scene.layout().cellOf(cell.beat());
        boolean isHeard = scene.playing().isPresent() && scene.playing().getAsInt() == cell.beat();
        Rectangle box = new Rectangle(at.x + 1, at.y, at.width - 2, at.height);
        on.setColor(isHeard ? palette.now() : palette.field());
        on.fill(box);
        if (!isHeard) {
            strip(on, scene, cell, box);
        }
        if (cell.isUnsure()) {
            dashed(on, box);
        }
        on.setColor(isHeard ? palette.ground() : palette.ink());
        on.setFont(usual.deriveFont(Font.BOLD, usual.getSize2D() * 1.5f));
        String number = cell.danced().isEmpty() ? Integer.toString(cell.songCount()) : cell.danced();
        if (cell.danced().isEmpty() && !isHeard) {
            on.setColor(palette.quiet());
            on.setFont(usual.deriveFont(usual.getSize2D() * 1.2f));
        }
        text(on, number, new Rectangle(box.x, box.y, box.width, box.height - box.height / STRIP_PARTS / 2), 0.5);
        small(on, cell, box, isHeard);
        selected(on, scene, cell, box);
    }

    /** What begins within a row stands over its count, and the song's own count where the dance counts otherwise. */
    private void small(Graphics2D on, Cell cell, Rectangle box, boolean isHeard) {
        on.setFont(usual.deriveFont(usual.getSize2D() * 0.85f));
        Rectangle top = new Rectangle(
                box.x + 4, box.y + 1, box.width - 8, on.getFontMetrics().getHeight());
        if (!cell.begins().isEmpty()) {
            on.setColor(isHeard ? palette.ground() : palette.now());
            on.fillRect(box.x, box.y, 3, box.height);
            text(on, cell.begins(), top, 0.1);
        } else if (cell.isOffThePhrase()) {
            on.setColor(isHeard ? palette.ground() : palette.quiet());
            text(on, Integer.toString(cell.songCount()), top, 1);
        }
    }

    private void strip(Graphics2D on, Scene scene, Cell cell, Rectangle box) {
        double to = cell.seconds() + length(scene.layout().rows(), cell);
        Color ink = palette.quiet();
        on.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), 90));
        int most = box.height / STRIP_PARTS;
        for (int x = 0; x < box.width; x += OUTLINE_PIXELS) {
            double from = cell.seconds() + (to - cell.seconds()) * x / box.width;
            double until = cell.seconds() + (to - cell.seconds()) * (x + OUTLINE_PIXELS) / box.width;
            int height = (int) Math.round(most * scene.outline().between(from, until));
            on.fillRect(box.x + x, box.y + box.height - height, Math.min(OUTLINE_PIXELS, box.width - x), height);
        }
    }

    private static double length(Rows rows, Cell cell) {
        int beat = cell.beat();
        return beat + 1 < rows.beats()
                ? rows.cell(beat + 1).seconds() - cell.seconds()
                : beat > 0 ? cell.seconds() - rows.cell(beat - 1).seconds() : 1;
    }

    private void dashed(Graphics2D on, Rectangle box) {
        on.setColor(palette.quiet());
        on.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {3, 3}, 0));
        on.drawRect(box.x + 1, box.y + 1, box.width - 3, box.height - 3);
    }

    private void selected(Graphics2D on, Scene scene, Cell cell, Rectangle box) {
        if (scene.selected().holds(cell.beat())) {
            on.setColor(palette.next());
            on.fillRect(box.x, box.y + box.height - 4, box.width, 4);
        }
        if (scene.selected().beat() == cell.beat()) {
            on.setColor(palette.ink());
            on.setStroke(new BasicStroke(2.5f));
            on.drawRect(box.x + 1, box.y + 1, box.width - 3, box.height - 3);
        }
    }

    /** @param middle 0 = at the left, 0.5 = in the middle, 1 = at the right */
    private static void text(Graphics2D on, String words, Rectangle in, double middle) {
        FontMetrics letters = on.getFontMetrics();
        String shown = cut(words, letters, in.width);
        int x = in.x + (int) Math.round((in.width - letters.stringWidth(shown)) * middle);
        int y = in.y + (in.height - letters.getHeight()) / 2 + letters.getAscent();
        on.drawString(shown, x, y);
    }

    private static String cut(String words, FontMetrics letters, int width) {
        if (letters.stringWidth(words) <= width) {
            return words;
        }
        int end = words.length();
        while (end > 0 && letters.stringWidth(words.substring(0, end) + "\u2026") > width) {
            end--;
        }
        return words.substring(0, end).strip() + "\u2026";
    }
}
