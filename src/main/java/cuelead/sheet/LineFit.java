package cuelead.sheet;

import java.util.List;
import java.util.Optional;

/** Whether the prose of a line fills its counts, tried without telling anyone. */
final class LineFit {
    static final int IMPOSSIBLE = 1_000_000;

    private LineFit() {}

    static boolean fits(String line) {
        return cost(line) < IMPOSSIBLE;
    }

    /** How far its figures must be stretched; {@link #IMPOSSIBLE} where it does not fit. */
    static int cost(String line) {
        int whole = wholeCost(line);
        return whole < IMPOSSIBLE
                ? whole
                : onlyDanced(line).map(LineFit::wholeCost).orElse(IMPOSSIBLE);
    }

    /** Whether all that stands behind the counts fills them. */
    static boolean fitsWhole(String line) {
        return wholeCost(line) < IMPOSSIBLE;
    }

    /** The line without what is only said in it, as long as before; the line itself where nothing is. */
    static String danced(String line) {
        String steps = OptionWords.withoutTail(line);
        return fitsWhole(steps) ? steps : onlyDanced(steps).orElse(steps);
    }

    private static Optional<String> onlyDanced(String line) {
        return CountGroup.read(line).flatMap(group -> SaidBehind.left(line, group.end()));
    }

    /** The same for all that stands behind the counts. */
    static int wholeCost(String line) {
        Optional<CountGroup> group = CountGroup.read(line);
        if (group.isEmpty()) {
            return IMPOSSIBLE;
        }
        List<Phrase> phrases = phrases(line, group.get().end());
        return areReadable(phrases)
                ? Fitting.of(
                                RepeatedLine.of(phrases, group.get().counts()),
                                group.get().counts())
                        .map(Fitting.Fit::cost)
                        .orElse(IMPOSSIBLE)
                : IMPOSSIBLE;
    }

    /** Whether there are phrases, and an action or a figure in each. */
    static boolean areReadable(List<Phrase> phrases) {
        return !phrases.isEmpty() && phrases.stream().allMatch(Phrase::readable);
    }

    static List<Phrase> phrases(String line, int from) {
        List<Term> terms = Vocabulary.STANDARD.danced(Scanner.tokens(line, from));
        return new ProseParser(Vocabulary.STANDARD, Problems.unheard(), 0, terms).phrases();
    }
}
