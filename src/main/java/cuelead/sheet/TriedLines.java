package cuelead.sheet;

import java.util.HashMap;
import java.util.Map;

/**
 * What came of the lines that were laid out with a line of the sheet at their head: every layout that is tried asks for the
 * same ones again. Belongs to one reading, so to one thread.
 */
final class TriedLines {
    private final Map<String, Integer> costs = new HashMap<>();
    private final Map<String, Integer> wholeCosts = new HashMap<>();
    private final Map<String, SheetLine> read = new HashMap<>();

    /** As {@link LineFit#cost}. */
    int cost(String text) {
        return costs.computeIfAbsent(text, LineFit::cost);
    }

    /** As {@link LineFit#wholeCost}. */
    int wholeCost(String text) {
        return wholeCosts.computeIfAbsent(text, LineFit::wholeCost);
    }

    /** A line of this text, whose words tell what it is. */
    SheetLine read(String text) {
        return read.computeIfAbsent(text, words -> new SheetLine(1, words));
    }
}
