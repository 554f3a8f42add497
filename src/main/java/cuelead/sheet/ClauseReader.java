package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.ClauseShape.Told;
import cuelead.sheet.FigureNames.FigureName;
import cuelead.sheet.Phrase.Joint;
import cuelead.sheet.Term.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the words of one clause, an action or a figure, into a draft; each sort of word is one method. */
final class ClauseReader {
    /** "Step R, a big step": how far it goes, no step of its own. */
    private static final Set<String> SIZES = Set.of("big", "long", "large", "small", "wide", "giant");

    /** What the body does all through a figure. */
    private static final Set<String> BODY_WORDS = Set.of("claps", "snaps", "clicks", "hip bumps", "bumps", "shimmies");

    /** How a figure or a step travels: "moving back". */
    private static final Set<String> TRAVELS =
            Set.of("moving", "travelling", "traveling", "going", "heading", "progressing");

    /** "Drag L to meet R": where it goes, no action of its own. */
    private static final Set<String> MEETS = Set.of("meet", "join");

    /** "So your right foot is free": how a foot is, not what it does. */
    private static final Set<String> STATES = Set.of("free", "ready", "is", "are", "be");

    private final TermCursor terms;
    private final PhraseDraft draft;
    private final SaidBeside beside;
    private final WeightWords weights;
    private List<String> name = List.of();
    private List<String> nameLeft = List.of();
    /** "Recovering onto R crossing over L": such a verb describes the step before, with the foot that stands. */
    private boolean participle;

    ClauseReader(TermCursor terms, LeftWords leftWords, PhraseDraft draft) {
        this.terms = terms;
        this.draft = draft;
        this.beside = new SaidBeside(terms, leftWords, draft);
        this.weights = new WeightWords(terms, draft);
    }

    /** clause := { foot | verb | part | place | onto | turn | weight | number | remark | filler } */
    void read(Optional<FigureName> figure) {
        name = figure.map(FigureName::words).orElse(List.of());
        nameLeft = name;
        boolean open = true;
        while (open && !isLink() && !terms.atEnd() && !terms.at(Kind.SEPARATOR)) {
            Term term = terms.peek();
            if (!nameLeft.isEmpty() && nameLeft.get(0).equals(term.meaning())) {
                nameLeft = nameLeft.subList(1, nameLeft.size());
                nameWord(term);
            } else {
                open = word(term);
            }
        }
        if (participle && draft.isDoneMeanwhile()) {
            draft.joint(Joint.RUN_ON);
        }
        draft.parted(terms.at(Kind.SEPARATOR)
                && (terms.peek().text().equals(":") || terms.peek().text().equals("-")));
    }

    /** "And" parts two actions, but not a foot and what it does ("LF + 1/4 turn left"), and not two sides of one: "heels and toes", "hips right and left" are told later. */
    private boolean isLink() {
        boolean link = terms.at(Kind.LINK) && nameLeft.isEmpty();
        if (link && draft.shape().isOnlyFeet() && !beginsAction()) {
            terms.advance();
            return false;
        }
        return link;
    }

    /** "Walk right, left, right and kick left": the word leads to what another foot does. */
    private boolean beginsAction() {
        return !draft.runsOn() && terms.peek().text().equals("and") && terms.nextIs(Kind.VERB);
    }

    private void nameWord(Term term) {
        terms.advance();
        if (term.is(Kind.FRACTION) || term.is(Kind.TURN) || term.meaning().equals("pivot")) {
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
                draft.told(Told.LEADS);
                yield terms.advance();
            }
            case WITH -> with();
            case FOOT -> foot(term);
            case PART -> part(term);
            case PLACE -> new PlaceWords(terms, draft).read(participle);
            case ONTO -> weights.onto();
            case TURN, FRACTION -> turn();
            case NUMBER -> number(term);
            case WEIGHT -> weights.weight();
            case NEGATION -> beside.negation();
            case DURING -> beside.during();
            case OPTION -> beside.option();
            case OPEN -> beside.brackets();
            case CLOCK -> beside.clock(term);
            case FILLER -> filler(term);
            case BODY -> beside.body(term);
            case MARK, COUNT, CLOSE, SEPARATOR, LINK -> terms.advance();
            case FIGURE_WORD, UNKNOWN -> {
                boolean restart = term.text().startsWith("restart");
                yield restart ? beside.restart() : unknown(term);
            }
        };
    }

    private boolean verb(Term term) {
        boolean size = draft.hasVerb() && SIZES.contains(term.text());
        if (size) {
            return terms.advance();
        }
        if (describes(term)) {
            if (term.meaning().equals("cross")) {
                draft.place("over");
            }
            return terms.advance();
        }
        boolean acts = draft.hasVerb() || draft.isFigure() || draft.turns();
        if (acts && term.meaning().equals("recover") && isOfWeight(term)) {
            return weights.weight();
        }
        if (!draft.takesVerb(term.meaning())) {
            return false;
        }
        participle = term.text().endsWith("ing");
        if (participle && draft.isEmpty() && term.meaning().equals("recover") && isOfWeight(term)) {
            draft.told(Told.SHIFTS);
        }
        if (term.text().startsWith("bring")) {
            draft.told(Told.BRINGS);
        }
        draft.verb(term.meaning());
        return terms.advance();
    }

    /** "Cross toe strut", "cross shuffle crossing over L": how the figure goes, no action of its own. */
    private boolean describes(Term term) {
        boolean before = !nameLeft.isEmpty() && term.meaning().equals("cross");
        boolean again = name.contains(term.meaning()) && term.text().endsWith("ing");
        return draft.isFigure() && (before || again);
    }

    /** "Unwind 1/2 turn R transferring weight onto R" tells of the weight, and is no step. */
    private static boolean isOfWeight(Term term) {
        return term.text().startsWith("transfer")
                || term.text().startsWith("shift")
                || term.text().equals("weight");
    }

    /**
     * "Shuffle back stepping R, L, R" lists the feet of the figure; "turn 1/4 right stepping L back" is one action;
     * "pivot 1/2 L stepping onto L" tells of the weight.
     */
    private boolean stepping() {
        boolean ofWeight = (draft.hasVerb() || turnsByName()) && terms.nextWordIs(Kind.ONTO);
        if (ofWeight) {
            return weights.weight();
        }
        if (!draft.isFigure() && draft.takesVerb("step")) {
            draft.verb("step");
            participle = true;
        } else if (!draft.isFigure()) {
            return false;
        }
        terms.advance();
        if (draft.isFigure() && terms.at(Kind.FOOT) && LISTS.stream().anyMatch(terms::nextIs)) {
            draft.feetFollow();
        }
        return true;
    }

    private static final Set<Kind> LISTS = EnumSet.of(Kind.SEPARATOR, Kind.LINK, Kind.MARK, Kind.FOOT);

    private boolean turnsByName() {
        return draft.isFigure() && name.stream().anyMatch(Set.of("pivot", "unwind", "paddle")::contains);
    }

    /** "vine right with touch" begins another action; "with R" and "with 1/4 turn" do not; "K step with claps" is danced with them. */
    private boolean with() {
        terms.advance();
        int mark = terms.position();
        terms.skip(Kind.FILLER);
        if (draft.isFigure() && BODY_WORDS.contains(terms.textHere())) {
            return terms.advance();
        }
        boolean action = draft.hasAction() && terms.at(Kind.VERB);
        if (!action) {
            terms.moveTo(mark);
        }
        return !action;
    }

    /** A foot; named again behind a way it is a side: "RF fwd diagonal right". */
    private boolean foot(Term term) {
        terms.advance();
        Foot foot = term.meaning().equals("left") ? Foot.LEFT : Foot.RIGHT;
        if (terms.at(Kind.PLACE, "diag") && (draft.hasFoot() || term.text().length() != 2)) {
            draft.place("diag");
            return terms.advance();
        }
        if (draft.shape().stepsWith(foot)) {
            draft.place("side");
        } else if ((terms.behind(Kind.PLACE) || draft.shape().sways())
                && draft.shape().isSideOf(foot)) {
            draft.towards(foot);
        } else {
            draft.foot(foot);
        }
        return true;
    }

    private boolean part(Term term) {
        draft.part(term.meaning());
        if (term.text().endsWith("s")) {
            draft.told(Told.BOTH_FEET);
        }
        return terms.advance();
    }

    private boolean turn() {
        int start = terms.position();
        new TurnWords(terms, draft).read();
        if (terms.position() == start) {
            draft.unknown(terms.peek());
            terms.advance();
        }
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
        } else if (value > MOST_TIMES) {
            draft.unknown(term);
        } else if (term.text().equals(term.meaning()) && !draft.isEmpty()) {
            draft.number(value);
        } else {
            draft.repeats(value);
        }
        return true;
    }

    /** Nothing is danced so often on one line: a larger number is none of times. */
    private static final int MOST_TIMES = 16;

    private boolean unknown(Term term) {
        draft.unknown(term);
        return terms.advance();
    }

    /** "Touch R toe to L instep": what it comes to is the other foot. */
    private boolean isPartOfFoot() {
        return terms.at(Kind.PART) || PARTS.contains(terms.textHere());
    }

    private static final Set<String> PARTS = Set.of("instep", "ankle", "arch");

    /** "to right side", "to the R diagonal", "to left": the side is a direction here, no foot. */
    private boolean filler(Term term) {
        if (TRAVELS.contains(term.text()) && draft.isEmpty()) {
            draft.told(Told.TRAVELS);
        }
        if (STATES.contains(term.text())) {
            draft.told(Told.RESTS);
        }
        terms.advance();
        if (term.text().equals("off") && terms.at(Kind.FOOT)) {
            return terms.advance();
        }
        if (!term.text().equals("to")) {
            return true;
        }
        terms.skip(Kind.FILLER);
        if (draft.hasVerb() && MEETS.contains(terms.textHere())) {
            draft.place("together");
            terms.advance();
            terms.footHere();
            return true;
        }
        Optional<Foot> side = terms.footHere();
        if (side.isPresent()) {
            if (draft.hasFoot() && isPartOfFoot()) {
                draft.place("together");
                terms.advance();
            } else if (terms.at(Kind.PLACE, "diag") || terms.at(Kind.PLACE, "side")) {
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
