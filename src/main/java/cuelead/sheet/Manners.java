package cuelead.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses the manners in which a sheet is written: each is tried on the whole sheet and kept only where the sheet then
 * makes far more sense, so that a mistake of the author's is told and not explained away.
 */
final class Manners {
    private static final List<Manner> OF_COUNTS = List.of(
            new SpokenCounts(),
            new DigitRuns(),
            new NumberedHeadings(),
            new Paragraphs(),
            new Paragraphs().then(new Lengths()),
            new SideBySide());
    /** Where no counts are written, or they are none. */
    private static final List<Manner> OF_LENGTHS = List.of(
            new NumberedSteps().then(new Lengths()),
            new NumberedSteps().then(new RunningTotals()),
            new Lengths(),
            new RunningTotals(),
            new ListNumbers().then(new Lengths()),
            new ListNumbers().then(new RunningTotals()));

    private static final int LONGEST_LINE = 2000;
    /** Two or three lines that do not fit are mistakes. */
    private static final int LEAST_GAIN = 14;

    static SheetLayout.Laid chosen(List<SheetLine> lines) {
        if (lines.stream().anyMatch(line -> line.text().length() > LONGEST_LINE)) {
            return SheetLayout.laid(lines);
        }
        return new Manners(lines).chosen();
    }

    /** What is plain by itself, in the usual words; each in the words of those before it. */
    private static final List<Manner> PLAIN = List.of(
            ChatStamps::left,
            TextTable::steps,
            TornSentences::joined,
            ShortTerms::spelled,
            ShortSteps::spelled,
            Degrees::asParts,
            TurnedOnBall::asTurns,
            Circles::asTurns,
            Dictated::parted,
            CountsAbove::paired,
            LetterTitle::first,
            SpelledSections::parted,
            BareClocks::told,
            lines -> new SpokenCounts().isPlain(lines) ? new SpokenCounts().usual(lines) : lines,
            CountOpeners::left,
            ListedCounts::joined,
            JoinedCounts::where,
            NumberedRanges::bracketed,
            NumberedSteps::counted,
            PhrasedWords::usual,
            new NamedParts());

    private static List<SheetLine> plain(List<SheetLine> lines) {
        List<SheetLine> plain = lines;
        for (Manner manner : PLAIN) {
            plain = manner.usual(plain);
        }
        return plain;
    }

    /** Each way to write the lines is laid out once, however many manners come to it. */
    private final Map<List<SheetLine>, Tried> known = new HashMap<>();

    private final Tried plain;
    private Tried best;

    private Manners(List<SheetLine> lines) {
        Tried asWritten = tried(plain(lines), Integer.MAX_VALUE);
        List<SheetLine> paragraphs = TornSentences.paragraphs(lines);
        Optional<Tried> prose = asWritten.cost() == 0 || paragraphs.equals(lines)
                ? Optional.empty()
                : Optional.of(tried(plain(paragraphs), asWritten.cost()));
        plain = prose.filter(other -> other.cost() < asWritten.cost()).orElse(asWritten);
        best = plain;
    }

    private SheetLayout.Laid chosen() {
        OF_COUNTS.forEach(this::consider);
        if (!LayoutFit.isMostlyCounted(best.whole())) {
            OF_LENGTHS.forEach(this::consider);
        }
        return best.whole();
    }

    private void consider(Manner manner) {
        if (best.cost() >= LEAST_GAIN) {
            Tried before = best;
            consider(manner, best);
            if (!before.lines().equals(plain.lines())) {
                consider(manner, plain);
            }
        }
    }

    /**
     * A way to write the lines, and how little sense it makes.
     *
     * @param laid empty where the layout was given up, for it makes less sense than was asked for
     */
    private record Tried(List<SheetLine> lines, Optional<SheetLayout.Laid> laid, int cost) {
        static Tried of(List<SheetLine> lines, int limit) {
            LayoutFit fit = new LayoutFit(limit);
            Optional<SheetLayout.Laid> laid = SheetLayout.laid(lines, fit);
            return new Tried(lines, laid, laid.map(fit::cost).orElse(limit + 1));
        }

        /** Of one that was not given up. */
        SheetLayout.Laid whole() {
            return laid.orElseThrow();
        }

        boolean tells(int limit) {
            return laid.isPresent() || cost > limit;
        }
    }

    private Tried tried(List<SheetLine> lines, int limit) {
        return known.compute(
                lines, (all, before) -> before != null && before.tells(limit) ? before : Tried.of(all, limit));
    }

    /** Takes a manner where the lines then make far more sense than those that it is tried on. */
    private void consider(Manner manner, Tried from) {
        List<SheetLine> usual = manner.usual(from.lines());
        int limit = Math.min(best.cost() - 1, Math.min(from.cost() / 2, from.cost() - LEAST_GAIN));
        if (!usual.equals(best.lines()) && !usual.equals(plain.lines())) {
            Tried other = tried(usual, limit);
            best = other.cost() <= limit ? other : best;
        }
    }
}
