package cuelead.rehearse;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds places for words in a picture so that none covers another. In the picture's own units, with the size of a letter in them. */
final class WordsInPicture {
    private static final double LINE_HEIGHTS = 1.15;
    /** Letters left free between two words. */
    private static final double GAP_LETTERS = 1;

    private final double letterWidth;
    private final double letterHeight;
    private final List<Rectangle2D> taken = new ArrayList<>();

    /** A word at a place: its middle. */
    record Placed(String word, double x, double y) {}

    WordsInPicture(double letterWidth, double letterHeight) {
        this.letterWidth = letterWidth;
        this.letterHeight = letterHeight;
    }

    /**
     * A place for a word.
     *
     * @param x    its middle
     * @param y    of the first row that is tried; the others lie one line further each
     * @param rows how many are tried, downwards where negative
     * @return empty when all are taken
     */
    Optional<Placed> place(String word, double x, double y, int rows) {
        double width = (word.length() + GAP_LETTERS) * letterWidth;
        double line = Math.signum(rows) * LINE_HEIGHTS * letterHeight;
        for (int row = 0; row < Math.abs(rows); row++) {
            double middle = y + row * line;
            Rectangle2D place = new Rectangle2D.Double(x - width / 2, middle - letterHeight / 2, width, letterHeight);
            if (taken.stream().noneMatch(place::intersects)) {
                taken.add(place);
                return Optional.of(new Placed(word, x, middle));
            }
        }
        return Optional.empty();
    }

    /** How many rows fit where the middle of the first lies so far from the edge. */
    int rowsWithin(double height) {
        double spare = height - letterHeight / 2;
        return spare < 0 ? 0 : 1 + (int) (spare / (LINE_HEIGHTS * letterHeight));
    }

    /** Nothing is to be written there. */
    void keepFree(double x, double y) {
        taken.add(new Rectangle2D.Double(x - letterWidth, y - letterHeight / 2, 2 * letterWidth, letterHeight));
    }
}
