package cuelead.listing;

import cuelead.dance.Dance;
import cuelead.sheet.SheetNotes;
import cuelead.sheet.SheetWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A dance written as a step sheet, in letters for a hand. */
final class StepSheet {
    private static final double TITLE_POINTS = 22;
    private static final double TEXT_POINTS = 12;
    private static final double COUNT_COLUMN_POINTS = 62;
    private static final double INDENT_POINTS = 14;
    private static final String BETWEEN_FACTS = ",  ";
    /** {@code Count: 32}, and no sentence. */
    private static final int LONGEST_FACT = 34;

    /** Counts, two spaces, steps. */
    private static final Pattern COUNTED = Pattern.compile("(\\d?[\\d&a,-]*)  +(\\S.*)");

    private final RowMaker maker;

    private StepSheet(RowMaker maker) {
        this.maker = maker;
    }

    static List<List<PrintedRow>> of(Dance dance, SheetNotes notes, RowMaker maker) {
        StepSheet sheet = new StepSheet(maker);
        List<List<PrintedRow>> blocks = new ArrayList<>();
        for (String block : SheetWriter.write(dance, notes).split("\n\n+")) {
            List<String> lines = block.lines().toList();
            blocks.add(blocks.isEmpty() ? sheet.head(lines) : sheet.body(lines));
        }
        return blocks;
    }

    /** The title; below it short facts side by side, and what is longer in lines of its own. */
    private List<PrintedRow> head(List<String> lines) {
        List<PrintedRow> rows = new ArrayList<>();
        rows.add(maker.text(lines.get(0), TITLE_POINTS, Letters.Face.BOLD, 0));
        List<String> facts = lines.subList(1, lines.size()).stream()
                .filter(line -> line.length() <= LONGEST_FACT)
                .toList();
        sideBySide(facts).forEach(line -> rows.add(plain(line)));
        lines.subList(1, lines.size()).stream()
                .filter(line -> line.length() > LONGEST_FACT)
                .forEach(line -> rows.add(plain(line)));
        return rows;
    }

    private List<String> sideBySide(List<String> facts) {
        List<String> lines = new ArrayList<>();
        for (String fact : facts) {
            int last = lines.size() - 1;
            String longer = lines.isEmpty() ? fact : lines.get(last) + BETWEEN_FACTS + fact;
            boolean fits =
                    maker.letters().widthPoints(maker.letters().printable(longer), TEXT_POINTS) <= maker.widthPoints();
            if (!lines.isEmpty() && fits) {
                lines.set(last, longer);
            } else {
                lines.add(fact);
            }
        }
        return lines;
    }

    private List<PrintedRow> body(List<String> lines) {
        List<PrintedRow> rows = new ArrayList<>();
        for (String line : lines) {
            Matcher counted = COUNTED.matcher(line);
            if (counted.matches()) {
                rows.add(maker.behind(
                        counted.group(1), counted.group(2), TEXT_POINTS, Letters.Face.PLAIN, COUNT_COLUMN_POINTS));
            } else {
                boolean isHead = line.startsWith("[") || line.equals(line.toUpperCase(Locale.ROOT));
                rows.add(maker.text(line, TEXT_POINTS, isHead ? Letters.Face.BOLD : Letters.Face.PLAIN, INDENT_POINTS));
            }
        }
        return rows;
    }

    private PrintedRow plain(String line) {
        return maker.text(line, TEXT_POINTS, Letters.Face.PLAIN, INDENT_POINTS);
    }
}
