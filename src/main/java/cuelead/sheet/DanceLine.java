package cuelead.sheet;

import java.util.List;
import java.util.Optional;

/** Whether a line belongs to the dance. */
final class DanceLine {
    private DanceLine() {}

    /** Whether a line belongs to the dance, so that the header ends above it. */
    static boolean begins(SheetLine line) {
        return SectionHead.read(line.text()).isPresent()
                || CountGroup.read(line.text())
                        .filter(group -> group.counts().get(0).number() <= 1)
                        .isPresent();
    }

    /** Whether a line belongs to the dance beyond doubt, so that it cannot be the title. */
    static boolean surelyBegins(SheetLine line) {
        if (SectionHead.read(line.text()).filter(SectionHead::hasRange).isPresent()) {
            return true;
        }
        List<Term> terms = Vocabulary.STANDARD.terms(line.tokens());
        return begins(line)
                && terms.stream().anyMatch(term -> term.is(Term.Kind.FOOT))
                && terms.stream().anyMatch(term -> term.is(Term.Kind.VERB));
    }

    /** A line without counts that turns, or that moves a foot. */
    static boolean mayBeDanced(SheetLine line) {
        List<Term> terms = Vocabulary.STANDARD.terms(line.tokens());
        boolean turns = terms.stream().anyMatch(term -> term.is(Term.Kind.FRACTION));
        boolean foot = terms.stream().anyMatch(term -> term.is(Term.Kind.FOOT));
        boolean moves = terms.stream().anyMatch(term -> term.is(Term.Kind.VERB) || term.is(Term.Kind.FIGURE_WORD));
        return turns || (foot && moves);
    }

    /** Whether counts stand on this line, or a heading that counts from 1, so that they belong to the head above it. */
    static boolean countsFromOne(SheetLine line) {
        Optional<SectionHead> head = SectionHead.read(line.text()).filter(SectionHead::hasRange);
        return head.isPresent()
                ? head.get().first() == 1
                : CountGroup.read(line.text()).isPresent();
    }
}
