package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.Set;

/** Where a clause goes: "to side", "behind", "over left", "beside R", "in front". */
final class PlaceWords {
    /** Words behind which only the standing foot is named; "together L" may be the foot that moves. */
    private static final Set<String> BESIDE = Set.of("beside", "next", "alongside", "bes", "in");

    private final TermCursor terms;
    private final PhraseDraft draft;

    PlaceWords(TermCursor terms, PhraseDraft draft) {
        this.terms = terms;
        this.draft = draft;
    }

    /**
     * A place may name the other foot: "over left", "beside R"; "in L diagonal" names one place only.
     *
     * @param participle whether the verb of the clause only describes the step before
     * @return always true: the clause goes on
     */
    boolean read(boolean participle) {
        Term term = terms.peek();
        boolean into = term.meaning().equals("in") && (terms.nextWordIs(Kind.FOOT) || terms.nextWordIs(Kind.PLACE));
        if (into) {
            return terms.advance();
        }
        if (terms.at(Kind.PLACE, "over") && lasts()) {
            return true;
        }
        String place = place(term.meaning());
        draft.place(place);
        terms.advance();
        if (place.equals("over") || place.equals("behind") || place.equals("together")) {
            standingFoot(term, participle);
        }
        return true;
    }

    /** "Drag L to R over two counts" */
    private boolean lasts() {
        int mark = terms.position();
        terms.advance();
        if (terms.at(Kind.NUMBER) && terms.nextIs(Kind.COUNT)) {
            draft.duration(terms.number());
            return terms.advance();
        }
        terms.moveTo(mark);
        return false;
    }

    /** "Tap R heel in front" and "shuffle behind" only travel, "step R in front" and "cross in front of L" cross. */
    private String place(String meaning) {
        boolean travels = draft.isFigure() && draft.goesAhead();
        boolean ahead = travels || (draft.goesAhead() && !terms.nextWordIs(Kind.FOOT));
        return switch (meaning) {
            case "front" -> ahead ? "fwd" : "over";
            case "behind" -> travels ? "back" : meaning;
            default -> meaning;
        };
    }

    private void standingFoot(Term term, boolean participle) {
        int before = terms.position();
        terms.skip(Kind.FILLER);
        boolean describes = participle && draft.runsOn();
        boolean names = draft.hasFoot() || (draft.hasVerb() && (describes || BESIDE.contains(term.text())));
        boolean otherFoot = names && terms.footHere().filter(this::isOther).isPresent();
        if (!otherFoot) {
            terms.moveTo(before);
        } else {
            terms.skipWords(Kind.PART, Kind.FILLER);
        }
    }

    /** The standing foot; without a foot of its own the clause's foot is the other one. */
    private boolean isOther(Foot foot) {
        if (!draft.hasFoot()) {
            draft.foot(foot.other());
        }
        return true;
    }
}
