package cuelead.sheet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the author of a sheet puts counts. A line that has them elsewhere, and does not go on from the line above, speaks of
 * counts rather than to have them: "Count 8 is a touch", "the shuffle is danced 3&amp;4", "return to count 1".
 */
final class CountHabit {
    /** Lines that are counted alike, as it is no accident. */
    private static final int FEWEST = 3;

    /** Where the counts of a line stand. */
    private enum Place {
        BEFORE,
        /** "Counts 1-2: ..." */
        BEHIND_WORD,
        BEHIND_STEPS
    }

    private final Map<Place, Integer> lines = new EnumMap<>(Place.class);

    /** The row, without its counts where it only speaks of them. {@code last} is the count before it. */
    Row kept(Row row, int last) {
        if (!row.isCounted()) {
            return row;
        }
        Place place = place(row);
        boolean goesOn = row.firstCount() == last + 1;
        if (!goesOn && habit().filter(usual -> usual != place).isPresent()) {
            LineKind kind = row.kind() == LineKind.COUNTS ? LineKind.OTHER : row.kind();
            return new Row(row.line().as(kind), kind, List.of(), row.apart());
        }
        lines.merge(place, 1, Integer::sum);
        return row;
    }

    private Optional<Place> habit() {
        return lines.size() == 1
                ? lines.keySet().stream()
                        .filter(place -> lines.get(place) >= FEWEST)
                        .findFirst()
                : Optional.empty();
    }

    private static Place place(Row row) {
        if (row.countsBehind()) {
            return Place.BEHIND_STEPS;
        }
        boolean word = Character.isLetter(row.line().text().charAt(row.line().firstColumn() - 1));
        return word ? Place.BEHIND_WORD : Place.BEFORE;
    }
}
