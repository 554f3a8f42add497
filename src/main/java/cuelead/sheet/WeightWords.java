package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.List;
import java.util.Optional;

/** What a clause says of the weight: "onto the ball of R", "taking weight on L", "weight ends left". */
final class WeightWords {
    private final TermCursor terms;
    private final PhraseDraft draft;

    WeightWords(TermCursor terms, PhraseDraft draft) {
        this.terms = terms;
        this.draft = draft;
    }

    /** "Onto the ball of R"; "on 8" and "on count 8" tell a place, and no length. */
    boolean onto() {
        terms.advance();
        terms.skip(Kind.FILLER);
        if (terms.at(Kind.NUMBER) || (terms.at(Kind.COUNT) && terms.nextIs(Kind.NUMBER))) {
            terms.skipWords(Kind.COUNT, Kind.NUMBER);
            draft.told(ClauseShape.Told.ON_COUNT);
            return true;
        }
        if (terms.at(Kind.PART, "ball") && draft.hasVerb()) {
            draft.part("ball");
        }
        terms.skipWords(Kind.PART, Kind.FILLER);
        if (terms.at(Kind.PLACE)) {
            return true;
        }
        terms.footHere().ifPresent(draft::onto);
        return true;
    }

    /**
     * "Starting with the weight on your left you step": where it is before the step, not behind it. "Slide L beside R taking
     * weight": the foot that moves takes it.
     */
    boolean weight() {
        boolean before = isLedTo() && draft.isEmpty();
        boolean taken = TAKEN.stream().anyMatch(terms.peek().text()::startsWith)
                || terms.peekAt(Math.max(0, terms.position() - 1)).is(Kind.WITH);
        terms.advance();
        terms.skipWords(Kind.ONTO, Kind.FILLER, Kind.UNKNOWN);
        if (terms.at(Kind.VERB, "hold")) {
            terms.advance();
            terms.skipWords(Kind.ONTO, Kind.FILLER, Kind.UNKNOWN);
        }
        Optional<Foot> named = terms.footHere();
        boolean own = named.isEmpty() && taken && draft.feet().size() == 1;
        (own ? Optional.of(draft.feet().get(0)) : named).filter(foot -> !before).ifPresent(draft::weight);
        return true;
    }

    private static final List<String> TAKEN = List.of("tak", "put", "plac");

    private boolean isLedTo() {
        int at = terms.position() - 1;
        while (at >= 0 && (terms.peekAt(at).is(Kind.FILLER) || terms.peekAt(at).is(Kind.WITH))) {
            at--;
        }
        return at >= 0 && terms.peekAt(at).is(Kind.LEADING);
    }
}
