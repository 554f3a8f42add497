package cuelead.sheet;

import cuelead.dance.Count;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether the prose of a line fills its counts, tried without telling anyone. The lines of one reading share one of these: the same
 * prose is tried with many counts.
 */
final class LineFit {
    static final int IMPOSSIBLE = 1_000_000;

    private final Map<Prose, List<Phrase>> phrases = new HashMap<>();
    private final Map<String, Integer> costs = new HashMap<>();
    private final Map<String, Integer> wholeCosts = new HashMap<>();

    boolean fits(String line) {
        return cost(line) < IMPOSSIBLE;
    }

    /** How far its figures must be stretched; {@link #IMPOSSIBLE} where it does not fit. */
    int cost(String line) {
        return TriedLines.once(costs, line, this::findCost);
    }

    private int findCost(String line) {
        int whole = wholeCost(line);
        return whole < IMPOSSIBLE
                ? whole
                : onlyDanced(line).map(this::wholeCost).orElse(IMPOSSIBLE);
    }

    /** Whether all that stands behind the counts fills them. */
    boolean fitsWhole(String line) {
        return wholeCost(line) < IMPOSSIBLE;
    }

    /** The line without what is only said in it, as long as before; the line itself where nothing is. */
    String danced(String line) {
        String steps = OptionWords.withoutTail(line);
        return fitsWhole(steps) ? steps : onlyDanced(steps).orElse(steps);
    }

    private Optional<String> onlyDanced(String line) {
        return CountGroup.read(line).flatMap(group -> SaidBehind.left(line, group.end(), this));
    }

    /** The same for all that stands behind the counts. */
    int wholeCost(String line) {
        return TriedLines.once(wholeCosts, line, this::findWholeCost);
    }

    private int findWholeCost(String line) {
        return CountGroup.read(line)
                .flatMap(group -> fitting(phrases(line, group.end()), group.counts()))
                .map(Fitting.Fit::cost)
                .orElse(IMPOSSIBLE);
    }

    private static Optional<Fitting.Fit> fitting(List<Phrase> phrases, List<Count> counts) {
        return areReadable(phrases) ? Fitting.of(RepeatedLine.of(phrases, counts), counts) : Optional.empty();
    }

    /** Whether what stands behind the steps of a line is said and not danced: they fill its counts without it alone. */
    boolean isOnlySaidBehind(String steps, String withTail) {
        return fits(steps) && !fits(withTail);
    }

    /** Whether there are phrases, and an action or a figure in each. */
    static boolean areReadable(List<Phrase> phrases) {
        return !phrases.isEmpty() && phrases.stream().allMatch(Phrase::readable);
    }

    /** Words from a 0-based index on; what stands just before them may tell where the first one begins. */
    private record Prose(String text, int from) {
        static Prose of(String line, int from) {
            return new Prose(line.substring(Math.max(0, from - 1)), Math.min(from, 1));
        }

        List<Phrase> phrases() {
            List<Term> terms = Vocabulary.STANDARD.danced(Scanner.tokens(text, from));
            return new ProseParser(Vocabulary.STANDARD, Problems.unheard(), 0, terms).phrases();
        }
    }

    /** Those behind a 0-based index; their columns are those of no line. */
    List<Phrase> phrases(String line, int from) {
        return TriedLines.once(phrases, Prose.of(line, from), Prose::phrases);
    }

    /** Those of prose without counts. */
    static List<Phrase> phrases(String prose) {
        return new Prose(prose, 0).phrases();
    }
}
