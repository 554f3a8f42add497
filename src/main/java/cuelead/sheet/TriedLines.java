package cuelead.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * What the lines of one reading came to, by their words: every layout that is tried asks for the same ones again. Belongs to
 * one reading, so to one thread.
 */
final class TriedLines {
    private final Map<String, List<Token>> tokens = new HashMap<>();
    private final Map<String, LineKind> kinds = new HashMap<>();
    private final Map<String, Boolean> naming = new HashMap<>();
    private final Map<String, Boolean> danced = new HashMap<>();
    private final Map<Behind, List<CountPlaces.Counted>> counted = new HashMap<>();
    private final Map<List<SheetLine>, OptionalInt> statedCounts = new HashMap<>();
    private final LineFit fit = new LineFit();

    List<Token> tokens(String text) {
        return once(tokens, text, words -> List.copyOf(Scanner.tokens(words)));
    }

    /** What its words tell it to be, as {@link LineKind#byItsWords}. */
    LineKind kind(SheetLine line) {
        return once(kinds, line.text(), words -> LineKind.byItsWords(line));
    }

    /** A line whose counts depend on the count before it. */
    private record Behind(String text, int lastCount) {}

    /** The length in counts that the lines above a dance state. */
    OptionalInt statedCounts(List<SheetLine> lines) {
        return once(statedCounts, lines, header -> {
            HeaderReader reader = new HeaderReader(Problems.unheard());
            header.forEach(reader::read);
            return reader.counts();
        });
    }

    /** As {@link WallNote#namesWall}. */
    boolean namesWall(SheetLine line) {
        return once(naming, line.text(), words -> WallNote.namesWall(line.tokens()));
    }

    /** As {@link DanceLine#isDanced}. */
    boolean isDanced(String prose) {
        return once(danced, prose, DanceLine::isDanced);
    }

    /** As {@link CountPlaces#of}. */
    List<CountPlaces.Counted> counted(String text, int lastCount) {
        return once(counted, new Behind(text, lastCount), line -> CountPlaces.of(line.text(), line.lastCount()));
    }

    /** Which of its lines fill their counts. */
    LineFit fit() {
        return fit;
    }

    /** Finding one may ask for others, so the map must not be held meanwhile. */
    static <K, T> T once(Map<K, T> known, K text, Function<K, T> find) {
        T found = known.get(text);
        if (found == null) {
            found = find.apply(text);
            known.put(text, found);
        }
        return found;
    }
}
