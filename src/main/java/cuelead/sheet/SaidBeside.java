package cuelead.sheet;

import cuelead.sheet.ClauseShape.Told;
import cuelead.sheet.Term.Kind;
import java.util.List;

/** What a clause says beside its steps: arms and heads, what is not danced, remarks in brackets, clock times, options. */
final class SaidBeside {
    private final TermCursor terms;
    private final LeftWords leftWords;
    private final PhraseDraft draft;

    SaidBeside(TermCursor terms, LeftWords leftWords, PhraseDraft draft) {
        this.terms = terms;
        this.leftWords = leftWords;
        this.draft = draft;
    }

    boolean negation() {
        terms.advance();
        int mark = terms.position();
        terms.skip(Kind.FILLER);
        if (terms.at(Kind.VERB) || terms.at(Kind.STEPPING) || terms.at(Kind.TURN)) {
            return notDone();
        }
        terms.moveTo(mark);
        if (terms.at(Kind.WEIGHT)) {
            draft.noWeight();
            terms.advance();
        }
        return true;
    }

    /** "Do not step L", "without turning": what is not danced is no step. */
    private boolean notDone() {
        leftWords.styling(terms.peek());
        while (!terms.atEnd() && !terms.at(Kind.SEPARATOR) && !terms.at(Kind.LINK)) {
            terms.advance();
        }
        return true;
    }

    /** "Hips right" is a bump; "left arm up", "look left" move no foot, and what is said behind them is of them. */
    boolean body(Term term) {
        terms.advance();
        if (term.meaning().equals("hips")) {
            if (!draft.hasVerb() && draft.takesVerb("bump")) {
                draft.verb("bump");
            }
            return true;
        }
        boolean knee = term.text().equals("knee") && draft.hasAction();
        draft.told(Told.OF_BODY);
        if (!knee) {
            terms.skipWords(Kind.FOOT, Kind.PLACE, Kind.FILLER, Kind.ONTO, Kind.BODY);
        }
        return true;
    }

    /** What the rest of the body does meanwhile is styling; a turn is not ("as you turn 1/4 R"), nor the step of a turn ("turn 1/4 R as you step"). */
    boolean during() {
        Term during = terms.peek();
        if (terms.nextWordIs(Kind.WEIGHT)) {
            return terms.advance();
        }
        boolean steps = draft.shape().isOnlyTurn() && terms.nextWordIs(Kind.VERB);
        terms.advance();
        if (steps) {
            return true;
        }
        int mark = terms.position();
        boolean turns = false;
        while (!terms.atEnd() && !terms.at(Kind.SEPARATOR)) {
            turns |= terms.at(Kind.FRACTION);
            terms.advance();
        }
        if (turns) {
            terms.moveTo(mark);
        } else if (terms.position() > mark) {
            leftWords.styling(during);
        }
        return true;
    }

    /** "Full turn L, or vine if you prefer": the easy option is no part of the dance. */
    boolean option() {
        leftWords.styling(terms.peek());
        boolean all = draft.isEmpty();
        while (!terms.atEnd() && (all || !terms.at(Kind.SEPARATOR))) {
            terms.advance();
        }
        return true;
    }

    boolean brackets() {
        List<Term> inside = terms.bracketed();
        draft.remark(Remark.read(inside));
        if (!draft.hasFoot()) {
            ListedFeet.read(inside).forEach(foot -> draft.listed(foot.foot(), foot.way()));
            ListedFeet.lead(inside).filter(foot -> !draft.hasFoot()).ifPresent(foot -> {
                if (terms.atEnd() && !draft.isFigure()) {
                    draft.startsLine(foot);
                } else {
                    draft.foot(foot);
                }
            });
        }
        return true;
    }

    /** "Step L fwd * Restart here on wall 3": all that is left is said beside the steps. */
    boolean restart() {
        draft.remark(Remark.read(terms.rest()));
        return true;
    }

    boolean clock(Term term) {
        draft.remark(Remark.clock(term));
        return terms.advance();
    }
}
