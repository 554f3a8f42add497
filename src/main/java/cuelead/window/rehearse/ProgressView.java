package cuelead.window.rehearse;

import cuelead.rehearse.Progress;
import cuelead.rehearse.Rehearsed;
import cuelead.window.frame.Lettering;
import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.swing.JPanel;

/** How the last rehearsals of a dance went: a bar each, as long as its share of calls on time, the latest below. */
final class ProgressView extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int MOST = 6;
    private static final int ROW = 26;
    private static final int DAY_WIDTH = 120;
    private static final int NUMBER_WIDTH = 150;
    private static final double LETTERS = 15;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private transient List<Rehearsed> last = List.of();
    private transient Palette palette = Palette.DARK;

    ProgressView() {
        setPreferredSize(new Dimension(400, ROW * (MOST + 1)));
        setMinimumSize(new Dimension(200, ROW * 2));
        getAccessibleContext().setAccessibleName("How your rehearsals went");
    }

    void show(Progress progress) {
        List<Rehearsed> all = progress.rehearsals();
        last = all.subList(Math.max(0, all.size() - MOST), all.size());
        getAccessibleContext()
                .setAccessibleDescription(last.stream()
                        .map(one -> DAY.format(one.at()) + ": " + told(one))
                        .collect(Collectors.joining("; ")));
        repaint();
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    /** {@code 71 of 102 on time}. */
    static String told(Rehearsed one) {
        return one.onTime() + " of " + one.planned() + " on time";
    }

    @Override
    protected void paintComponent(Graphics on) {
        super.paintComponent(on);
        Graphics2D copy = (Graphics2D) on.create();
        copy.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        copy.setColor(palette.ink());
        word(copy, last.isEmpty() ? "No rehearsal of this dance yet." : "How your rehearsals went", 0, 0, getWidth());
        int bar = Math.max(10, getWidth() - DAY_WIDTH - NUMBER_WIDTH);
        for (int i = 0; i < last.size(); i++) {
            Rehearsed one = last.get(i);
            int y = ROW * (i + 1);
            copy.setColor(palette.quiet());
            word(copy, DAY.format(one.at()), 0, y, DAY_WIDTH - 8.0);
            copy.setColor(palette.field());
            copy.fillRect(DAY_WIDTH, y + 4, bar - 10, ROW - 8);
            copy.setColor(palette.now());
            double share = (double) one.onTime() / Math.max(1, one.planned());
            copy.fillRect(DAY_WIDTH, y + 4, (int) Math.round(share * (bar - 10)), ROW - 8);
            copy.setColor(palette.ink());
            word(copy, told(one), DAY_WIDTH + bar, y, NUMBER_WIDTH);
        }
        copy.dispose();
    }

    private static void word(Graphics2D on, String words, double x, double y, double width) {
        Lettering.line(words, Lettering.Weight.PLAIN, LETTERS, LETTERS * 0.7, width, on.getFontRenderContext())
                .draw(on, x, y + 3);
    }
}
