package cuelead.sheet;

import cuelead.sheet.ClauseShape.Told;
import cuelead.sheet.Term.Kind;
import java.util.List;
import java.util.Optional;

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
        if (rollsKnee(term)) {
            draft.verb("kneepop");
            draft.unknown().removeIf(SaidBeside::isRoll);
            return terms.advance();
        }
        boolean knee = term.text().equals("knee") && draft.hasAction();
        draft.told(Told.OF_BODY);
        if (!knee) {
            terms.skipWords(Kind.FOOT, Kind.PLACE, Kind.FILLER, Kind.ONTO, Kind.BODY);
        }
        return true;
    }

    /** "Roll R knee out", "R knee in": what is danced there, where nothing else is. */
    private boolean rollsKnee(Term term) {
        boolean goes = terms.at(Kind.PLACE, "in") || terms.at(Kind.PLACE, "out");
        boolean named = draft.hasFoot() || draft.unknown().stream().anyMatch(SaidBeside::isRoll);
        return term.text().startsWith("knee") && named && goes && !draft.hasAction() && draft.takesVerb("kneepop");
    }

    private static boolean isRoll(Term term) {
        return term.text().startsWith("roll");
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
        if (inside.size() == 1 && isTimes(inside.get(0))) {
            draft.repeats(new TermCursor(inside).number());
            return true;
        }
        Optional<PhraseDraft> turn = turn(inside);
        turn.ifPresentOrElse(
                said -> draft.turnInBrackets(said, Remark.read(inside)), () -> draft.remark(Remark.read(inside)));
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

    /** "(x2)", "(twice)" */
    private static boolean isTimes(Term term) {
        return term.is(Kind.NUMBER) && !term.text().equals(term.meaning());
    }

    /** "(full turn R over 4 counts)", "(turning 3/4 L)" behind feet that are listed. */
    private Optional<PhraseDraft> turn(List<Term> inside) {
        TermCursor said = new TermCursor(inside);
        said.skipWords(Kind.FILLER);
        boolean moves = draft.hasFoot() || draft.hasVerb() || draft.isFigure();
        boolean turns = (said.at(Kind.TURN) || said.at(Kind.FRACTION)) && moves && !draft.turns();
        if (!turns) {
            return Optional.empty();
        }
        PhraseDraft turn = new PhraseDraft(said.peek().column());
        new TurnWords(said, turn).read();
        return Optional.of(turn).filter(PhraseDraft::turns);
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
