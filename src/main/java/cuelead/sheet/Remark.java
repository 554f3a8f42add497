package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What stands in brackets beside an action: a clock time, a weight note, a length, the mark of a restart. All other
 * brackets hold styling or easy options, which are no steps.
 *
 * @param remarks  clock, weight, restart
 * @param duration the length in counts, where it is one
 */
record Remark(Phrase.Remarks remarks, OptionalInt duration) {
    static Remark read(List<Term> inside) {
        Optional<Phrase.Stated<Facing>> clock = Optional.empty();
        Optional<Foot> weight = Optional.empty();
        boolean noWeight = false;
        OptionalInt duration = OptionalInt.empty();
        TermCursor terms = new TermCursor(inside);
        while (!terms.atEnd()) {
            Term term = terms.peek();
            if (term.is(Kind.CLOCK)) {
                clock = Optional.of(stated(term));
            } else if (term.is(Kind.NEGATION) && terms.nextIs(Kind.WEIGHT)) {
                noWeight = true;
            } else if (term.is(Kind.WEIGHT) && !noWeight) {
                weight = weightHere(terms);
            } else if (term.is(Kind.NUMBER) && terms.nextIs(Kind.COUNT)) {
                duration = OptionalInt.of(terms.number());
            }
            if (!terms.atEnd()) {
                terms.advance();
            }
        }
        boolean restart = inside.stream().anyMatch(term -> term.text().startsWith("restart"));
        return new Remark(
                new Phrase.Remarks(clock, weight, noWeight, restart), restart ? OptionalInt.empty() : duration);
    }

    static Remark clock(Term term) {
        return new Remark(
                new Phrase.Remarks(Optional.of(stated(term)), Optional.empty(), false, false), OptionalInt.empty());
    }

    private static Optional<Foot> weightHere(TermCursor terms) {
        terms.advance();
        terms.skipWords(Kind.ONTO, Kind.FILLER, Kind.UNKNOWN);
        return terms.footHere();
    }

    private static Phrase.Stated<Facing> stated(Term term) {
        return new Phrase.Stated<>(facing(term.meaning()), term.column());
    }

    /** From {@code 9:00} or {@code 10:30}. */
    static Facing facing(String clock) {
        String[] parts = clock.split(":", -1);
        int halfHours = Integer.parseInt(parts[0]) * 2 + (parts[1].equals("30") ? 1 : 0);
        return new Facing(Math.floorMod(halfHours * 15, 360));
    }
}
