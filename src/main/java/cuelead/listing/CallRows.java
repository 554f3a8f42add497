package cuelead.listing;

import cuelead.dance.Count;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.plan.CallWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The calls of a section in large letters, half an eight a row, each behind its count. The letters are for a sheet on a
 * stand at arm's length: at 18 points an x is 3.3 mm high, which is 16 minutes of arc at 0.7 m; a normal eye still reads
 * letters of 5 (Snellen 1862).
 */
final class CallRows {
    /** The smallest letters of words, in points. */
    static final int LEAST_POINTS = 18;

    /** The largest. */
    static final int MOST_POINTS = 30;

    private static final double COUNT_POINTS = 12;
    private static final double LINE = 1.35;
    private static final double AFTER_COUNT_POINTS = 5;
    private static final double AFTER_WORD_POINTS = 12;
    private static final String SILENCE = "\u2013";

    private final RowMaker maker;
    private final int inRow;
    private final double wordPoints;
    private int rowsOutOfColumns;

    /**
     * With letters of a size.
     *
     * @param inRow counts
     */
    CallRows(RowMaker maker, int inRow, double wordPoints) {
        this.maker = maker;
        this.inRow = inRow;
        this.wordPoints = wordPoints;
    }

    /** How many rows had so much to say that their counts do not stand below those of other rows. */
    int rowsOutOfColumns() {
        return rowsOutOfColumns;
    }

    List<PrintedRow> of(Section section) {
        List<PrintedRow> rows = new ArrayList<>();
        int last = section.steps().stream()
                .mapToInt(step -> step.count().number())
                .max()
                .orElse(0);
        for (int first = 1; first <= Math.max(last, section.length()); first += inRow) {
            rows.add(row(section, first));
        }
        return rows;
    }

    /** A count's label and its call; without words where nothing is danced on it. */
    private record Cell(int number, String label, String words) {}

    private PrintedRow row(Section section, int first) {
        List<Cell> cells = new ArrayList<>();
        for (int number = first == 1 ? 0 : first; number < first + inRow; number++) {
            cells.addAll(cells(section, number));
        }
        Pen pen = new Pen(true).write(cells, first);
        if (!pen.isWithinColumns) {
            pen = new Pen(false).write(cells, first);
            rowsOutOfColumns++;
        }
        return new PrintedRow(pen.words, pen.base + (LINE - 1) * wordPoints, false);
    }

    private static List<Cell> cells(Section section, int number) {
        List<Cell> cells = new ArrayList<>();
        for (Step step : section.steps()) {
            Count count = step.count();
            if (count.number() == number) {
                String label = count.isWhole() || number == 0
                        ? count.label().replaceFirst("^0", "")
                        : count.split().mark();
                String call = CallWords.of(section, step);
                cells.add(new Cell(number, label, call.isEmpty() ? SILENCE : call));
            }
        }
        boolean isOnCount =
                section.steps().stream().anyMatch(step -> step.count().equals(Count.on(number)));
        if (!isOnCount && number >= 1 && number <= section.length()) {
            cells.add(0, new Cell(number, String.format(Locale.ROOT, "%d", number), ""));
        }
        return cells;
    }

    /** Writes a row: each count in its column where all calls have room there, else one behind the other. */
    private final class Pen {
        private final boolean isInColumns;
        private final List<PrintedRow.Words> words = new ArrayList<>();
        private double x;
        private double base = wordPoints;
        private boolean isWithinColumns = true;

        Pen(boolean isInColumns) {
            this.isInColumns = isInColumns;
        }

        Pen write(List<Cell> cells, int first) {
            double column = maker.widthPoints() / inRow;
            int number = -1;
            for (Cell cell : cells) {
                if (isInColumns && cell.number() != number && cell.number() >= first) {
                    double start = (cell.number() - first) * column;
                    isWithinColumns &= x <= start + 1e-6;
                    x = start;
                }
                number = cell.number();
                write(cell);
            }
            isWithinColumns &= x - AFTER_WORD_POINTS <= maker.widthPoints();
            return this;
        }

        private void write(Cell cell) {
            String label = maker.letters().printable(cell.label());
            String call = maker.letters().printable(cell.words());
            double labelWidth = maker.letters().widthPoints(label, COUNT_POINTS) + AFTER_COUNT_POINTS;
            goOn(labelWidth + maker.letters().widthPoints(call.split(" ", 2)[0], wordPoints));
            words.add(new PrintedRow.Words(x, base, label, COUNT_POINTS, Letters.Face.QUIET));
            x += labelWidth;
            if (isInColumns) {
                word(call);
            } else {
                for (String word : call.split(" ")) {
                    goOn(maker.letters().widthPoints(word, wordPoints));
                    word(word);
                    x += maker.letters().widthPoints(" ", wordPoints);
                }
            }
            x += AFTER_WORD_POINTS;
        }

        /** In the line below, where there is no room in this one. */
        private void goOn(double width) {
            if (!isInColumns && x > 0 && x + width > maker.widthPoints()) {
                x = 0;
                base += LINE * wordPoints;
            }
        }

        /** Smaller where it is wider than the paper. */
        private void word(String word) {
            if (word.isEmpty()) {
                return;
            }
            double width = maker.letters().widthPoints(word, wordPoints);
            double fits = isInColumns ? 1 : Math.min(1, (maker.widthPoints() - x) / width);
            words.add(new PrintedRow.Words(x, base, word, wordPoints * fits, Letters.Face.BOLD));
            x += width * fits;
        }
    }
}
