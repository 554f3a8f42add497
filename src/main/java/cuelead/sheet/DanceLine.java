package cuelead.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether a line belongs to the dance. */
final class DanceLine {
    private DanceLine() {}

    /** Whether words of the dance stand here: an action, a figure, a foot. */
    static boolean isDanced(String prose) {
        return Vocabulary.STANDARD.terms(Scanner.tokens(prose)).stream()
                .anyMatch(term -> term.is(Term.Kind.VERB)
                        || term.is(Term.Kind.FIGURE_WORD)
                        || term.is(Term.Kind.PLACE)
                        || term.is(Term.Kind.PART));
    }

    /** Whether a line of steps stands here, with counts or without, and nothing of another kind. */
    static boolean isOfSteps(SheetLine line) {
        LineKind kind = LineKind.of(line);
        return (kind == LineKind.OTHER || kind == LineKind.COUNTS) && line.isDanced();
    }

    /** Words, perhaps a turn, that belong to the action before them. */
    static boolean movesNoFoot(String prose) {
        return Vocabulary.STANDARD.terms(Scanner.tokens(prose)).stream()
                .noneMatch(term ->
                        term.is(Term.Kind.VERB) || term.is(Term.Kind.STEPPING) || term.is(Term.Kind.FIGURE_WORD));
    }

    /** Whether a word turns someone, may quote what turns, or tells where the dancers face. */
    static boolean mayTurn(String prose) {
        return Vocabulary.STANDARD.terms(Scanner.tokens(prose)).stream()
                .anyMatch(term -> term.is(Term.Kind.FRACTION)
                        || term.is(Term.Kind.TURN)
                        || term.is(Term.Kind.CLOCK)
                        || TURNING.contains(term.meaning())
                        || REPEATING.contains(term.text())
                        || NotUnderstood.mayTurn(term.text()));
    }

    private static final Set<String> TURNING =
            Set.of("pivot", "spin", "unwind", "monterey", "paddle", "spiral", "rolling", "volta", "swivel", "turning");
    private static final Set<String> REPEATING = Set.of("repeat", "again", "same", "mirror", "as", "these", "reverse");

    /** Words, perhaps a facing, but no action. */
    static boolean movesNothing(String prose) {
        return Vocabulary.STANDARD.terms(Scanner.tokens(prose)).stream()
                .noneMatch(term -> term.is(Term.Kind.VERB)
                        || term.is(Term.Kind.STEPPING)
                        || term.is(Term.Kind.FIGURE_WORD)
                        || term.is(Term.Kind.FRACTION));
    }

    /** Words in which no foot is named, moves or turns. */
    static boolean isStill(String prose) {
        return movesNothing(prose)
                && Vocabulary.STANDARD.terms(Scanner.tokens(prose)).stream().noneMatch(term -> term.is(Term.Kind.FOOT));
    }

    /** A line without counts that turns, or that moves a foot. */
    static boolean mayBeDanced(SheetLine line) {
        List<Term> terms = Vocabulary.STANDARD.terms(line.tokens());
        boolean foot = terms.stream().anyMatch(term -> term.is(Term.Kind.FOOT));
        boolean turn = foot || terms.stream().anyMatch(DanceLine::isTurn);
        boolean turns = terms.stream()
                .anyMatch(term -> term.is(Term.Kind.FRACTION)
                        && (turn || Scanner.isDigit(term.text().charAt(0))));
        boolean moves = terms.stream().anyMatch(term -> term.is(Term.Kind.VERB) || term.is(Term.Kind.FIGURE_WORD));
        return turns || (foot && moves) || terms.stream().map(Term::text).anyMatch(NotUnderstood::isWord);
    }

    /** "The whole dance" and "half past seven" turn nobody. */
    private static boolean isTurn(Term term) {
        return term.is(Term.Kind.TURN) || TURNING.contains(term.meaning());
    }

    /** Whether counts stand on this line, or a heading that counts from 1, so that they belong to the head above it. */
    static boolean countsFromOne(SheetLine line) {
        Optional<SectionHead> head = SectionHead.read(line.text()).filter(SectionHead::hasRange);
        return head.isPresent()
                ? head.get().first() == 1
                : CountGroup.read(line.text()).isPresent();
    }
}
