package cuelead.listing;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes rows of text as wide as the paper allows.
 *
 * @param widthPoints of the text
 */
record RowMaker(Letters letters, double widthPoints) {
    private static final double LINE = 1.3;
    private static final double BASE = 1.0;

    /** A text in as many lines as it needs; those below the first stand further in. */
    PrintedRow text(String text, double sizePoints, Letters.Face face, double indentPoints) {
        return behind("", text, sizePoints, face, indentPoints);
    }

    /** Words at the left margin, and a text behind them in lines of its own width. */
    PrintedRow behind(String first, String text, double sizePoints, Letters.Face face, double indentPoints) {
        List<PrintedRow.Words> words = new ArrayList<>();
        double base = sizePoints * BASE;
        if (!first.isEmpty()) {
            words.add(new PrintedRow.Words(0, base, letters.printable(first), sizePoints, Letters.Face.BOLD));
        }
        double x = first.isEmpty() ? 0 : indentPoints;
        List<String> lines = lines(text, sizePoints, x, indentPoints);
        for (String line : lines) {
            words.add(new PrintedRow.Words(x, base, line, sizePoints, face));
            base += sizePoints * LINE;
            x = indentPoints;
        }
        return new PrintedRow(words, Math.max(1, lines.size()) * sizePoints * LINE, face == Letters.Face.BOLD);
    }

    /** Broken between words; a word that is wider than a line, between letters. */
    private List<String> lines(String text, double sizePoints, double first, double others) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : letters.printable(text).split(" ")) {
            double room = widthPoints - (lines.isEmpty() ? first : others);
            String longer = line.isEmpty() ? word : line + " " + word;
            if (letters.widthPoints(longer, sizePoints) <= room) {
                line = new StringBuilder(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line = new StringBuilder(cut(word, sizePoints, widthPoints - others, lines));
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** Adds whole lines of a word that is wider than a line, and gives what is left of it. */
    private String cut(String word, double sizePoints, double room, List<String> into) {
        String rest = word;
        while (letters.widthPoints(rest, sizePoints) > room) {
            int end = rest.offsetByCodePoints(0, 1);
            while (end < rest.length()
                    && letters.widthPoints(rest.substring(0, rest.offsetByCodePoints(end, 1)), sizePoints) <= room) {
                end = rest.offsetByCodePoints(end, 1);
            }
            into.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
