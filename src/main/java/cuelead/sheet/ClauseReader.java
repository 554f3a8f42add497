package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads the words of one clause, an action or a figure, into a draft; each sort of word is one method. */
final class ClauseReader {
    /** Words behind which only the standing foot is named; "together L" may be the foot that moves. */
    private static final Set<String> BESIDE = Set.of("beside", "next", "alongside", "bes", "in");

    /** "Step R, a big step": how far it goes, no step of its own. */
    private static final Set<String> SIZES = Set.of("big", "long", "large", "small", "wide", "giant");

    private final TermCursor terms;
    private final LeftWords leftWords;
    private final PhraseDraft draft;
    private List<String> nameLeft = List.of();

    ClauseReader(TermCursor terms, LeftWords leftWords, PhraseDraft draft) {
        this.terms = terms;
        this.leftWords = leftWords;
        this.draft = draft;
    }

    /** clause := { foot | verb | part | place | onto | turn | weight | number | remark | filler } */
    void read(Optional<Vocabulary.FigureName> name) {
        nameLeft = name.map(Vocabulary.FigureName::words).orElse(List.of());
        boolean open = true;
        while (open && !terms.atEnd() && !terms.at(Kind.SEPARATOR) && !isLink()) {
            Term term = terms.peek();
            if (!nameLeft.isEmpty() && nameLeft.get(0).equals(term.meaning())) {
                nameLeft = nameLeft.subList(1, nameLeft.size());
                nameWord(term);
            } else {
                open = word(term);
            }
        }
        draft.parted(terms.at(Kind.SEPARATOR)
                && (terms.peek().text().equals(":") || terms.peek().text().equals("-")));
    }

    /** "And" parts two actions, but not two sides of one: "heels and toes", "hips right and left" are told later. */
    private boolean isLink() {
        return terms.at(Kind.LINK) && nameLeft.isEmpty();
    }

    private void nameWord(Term term) {
        terms.advance();
        if (term.is(Kind.FRACTION) || term.is(Kind.TURN)) {
            int mark = terms.position();
            terms.skipOverShoulder();
            Optional<Foot> side = terms.footHere();
            side.ifPresentOrElse(draft::turnSide, () -> terms.moveTo(mark));
        }
    }

    /** Takes one word; false where a new action begins instead. */
    private boolean word(Term term) {
        return switch (term.kind()) {
            case VERB -> verb(term);
            case STEPPING -> stepping();
            case LEADING -> {
                draft.leads();
                yield terms.advance();
            }
            case WITH -> with();
            case FOOT -> foot(term);
            case PART -> part(term);
            case PLACE -> place(term);
            case ONTO -> onto();
            case TURN, FRACTION -> turn();
            case NUMBER -> number(term);
            case WEIGHT -> weight();
            case NEGATION -> negation();
            case DURING -> during();
            case OPEN -> brackets();
            case CLOCK -> clock(term);
            case FILLER -> filler(term);
            case MARK, COUNT, CLOSE, SEPARATOR, LINK -> terms.advance();
            case FIGURE_WORD, UNKNOWN -> {
                draft.unknown(term);
                yield terms.advance();
            }
        };
    }

    private boolean verb(Term term) {
        boolean size = draft.hasVerb() && SIZES.contains(term.text());
        if (size) {
            return terms.advance();
        }
        if (!draft.takesVerb(term.meaning())) {
            return false;
        }
        draft.verb(term.meaning());
        return terms.advance();
    }

    /** "Shuffle back stepping R, L, R" lists the feet of the figure; "turn 1/4 right stepping L back" is one action. */
    private boolean stepping() {
        if (!draft.isFigure() && draft.takesVerb("step")) {
            draft.verb("step");
        } else if (!draft.isFigure()) {
            return false;
        }
        return terms.advance();
    }

    /** "vine right with touch" begins another action; "with R" and "with 1/4 turn" do not. */
    private boolean with() {
        terms.advance();
        int mark = terms.position();
        terms.skip(Kind.FILLER);
        boolean action = draft.hasAction() && terms.at(Kind.VERB);
        if (!action) {
            terms.moveTo(mark);
        }
        return !action;
    }

    private boolean foot(Term term) {
        terms.advance();
        if (terms.at(Kind.PLACE, "diag")) {
            draft.place("diag");
            return terms.advance();
        }
        draft.foot(term.meaning().equals("left") ? Foot.LEFT : Foot.RIGHT);
        return true;
    }

    private boolean part(Term term) {
        draft.part(term.meaning());
        return terms.advance();
    }

    /** A place may name the other foot: "over left", "beside R". */
    private boolean place(Term term) {
        draft.place(term.meaning());
        terms.advance();
        if (term.meaning().equals("over")
                || term.meaning().equals("behind")
                || term.meaning().equals("together")) {
            int before = terms.position();
            terms.skip(Kind.FILLER);
            boolean names = draft.hasFoot() || (draft.hasVerb() && BESIDE.contains(term.text()));
            boolean otherFoot = names && terms.footHere().filter(this::isOther).isPresent();
            if (!otherFoot) {
                terms.moveTo(before);
            } else {
                terms.skipWords(Kind.PART, Kind.FILLER);
            }
        }
        return true;
    }

    /** The standing foot; without a foot of its own the clause's foot is the other one. */
    private boolean isOther(Foot foot) {
        if (!draft.hasFoot()) {
            draft.foot(foot.other());
        }
        return true;
    }

    private boolean onto() {
        terms.advance();
        terms.skip(Kind.FILLER);
        terms.skip(Kind.PART);
        terms.skip(Kind.FILLER);
        if (terms.at(Kind.PLACE)) {
            return true;
        }
        terms.footHere().ifPresent(draft::onto);
        return true;
    }

    /** A fraction that nobody can turn: "2/9". */
    private boolean noTurn(int column) {
        if (!draft.turns() && !draft.namesTurn()) {
            draft.openTurn(column);
        }
        draft.unknown(terms.peek());
        return terms.advance();
    }

    /** turn := [turn] [number] fraction [turn] [to | over] [side] | turn side fraction */
    private boolean turn() {
        int column = terms.peek().column();
        if (terms.at(Kind.TURN, "paddle")) {
            draft.paddle();
        }
        terms.skipWords(Kind.TURN, Kind.FILLER);
        Optional<Foot> side = terms.at(Kind.FOOT) && terms.nextIs(Kind.FRACTION) ? terms.footHere() : Optional.empty();
        int whole = terms.at(Kind.NUMBER) ? terms.number() : 0;
        OptionalInt part = terms.fraction();
        if (part.isEmpty() && terms.at(Kind.FRACTION)) {
            return noTurn(column);
        }
        if (part.isEmpty() && draft.namesTurn()) {
            terms.skipOverShoulder();
            terms.footHere().ifPresent(draft::turnSide);
            return true;
        }
        if (part.isEmpty() && (draft.turns() || terms.at(Kind.CLOCK) || terms.at(Kind.ONTO))) {
            return true;
        }
        if (part.isEmpty()) {
            draft.openTurn(column);
            return true;
        }
        terms.skipWords(Kind.TURN, Kind.MARK);
        int mark = terms.position();
        terms.skipOverShoulder();
        if (side.isEmpty()) {
            side = terms.footHere();
        }
        if (side.isEmpty()) {
            terms.moveTo(mark);
        }
        draft.turn(whole * 360 + part.getAsInt(), side, column);
        return true;
    }

    private boolean number(Term term) {
        int value = terms.number();
        if (terms.at(Kind.VERB, "step") && terms.peek().text().equals("steps")) {
            terms.advance();
            draft.repeats(value);
        } else if (terms.at(Kind.COUNT)) {
            terms.advance();
            draft.duration(value);
        } else if (term.text().equals(term.meaning()) && !draft.isEmpty()) {
            draft.number(value);
        } else {
            draft.repeats(value);
        }
        return true;
    }

    private boolean weight() {
        terms.advance();
        terms.skipWords(Kind.ONTO, Kind.FILLER, Kind.UNKNOWN);
        terms.footHere().ifPresent(draft::weight);
        return true;
    }

    private boolean negation() {
        terms.advance();
        if (terms.at(Kind.WEIGHT)) {
            draft.noWeight();
            terms.advance();
        }
        return true;
    }

    /** What the rest of the body does meanwhile is styling. */
    private boolean during() {
        leftWords.styling(terms.peek());
        while (!terms.atEnd() && !terms.at(Kind.SEPARATOR)) {
            terms.advance();
        }
        return true;
    }

    private boolean brackets() {
        List<Term> inside = terms.bracketed();
        draft.remark(Remark.read(inside));
        if (!draft.hasFoot()) {
            ListedFeet.read(inside).forEach(foot -> draft.listed(foot.foot(), foot.way()));
        }
        return true;
    }

    private boolean clock(Term term) {
        draft.remark(Remark.clock(term));
        return terms.advance();
    }

    /** "to right side", "to the R diagonal", "to left": the side is a direction here, no foot. */
    private boolean filler(Term term) {
        terms.advance();
        if (!term.text().equals("to")) {
            return true;
        }
        terms.skip(Kind.FILLER);
        Optional<Foot> side = terms.footHere();
        if (side.isPresent()) {
            if (terms.at(Kind.PLACE, "diag") || terms.at(Kind.PLACE, "side")) {
                draft.place(terms.peek().meaning());
                terms.advance();
            } else {
                draft.place(draft.drawsTo(side.get()) ? "together" : "side");
            }
            draft.towards(side.get());
        }
        return true;
    }
}
