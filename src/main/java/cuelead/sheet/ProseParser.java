package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads the prose of a count line: actions and figures, parted by commas, "and", "then". Each rule of the grammar is
 * one method; words that are not understood become problems and reading goes on at the next action.
 */
final class ProseParser {
    private final Vocabulary vocabulary;
    private final LeftWords leftWords;
    private final TermCursor terms;
    private final List<Phrase> phrases = new ArrayList<>();
    private boolean doubtful;

    ProseParser(Vocabulary vocabulary, Problems problems, int line, List<Term> terms) {
        this.vocabulary = vocabulary;
        this.leftWords = new LeftWords(vocabulary, problems, line);
        this.terms = new TermCursor(terms);
    }

    /** line := [phrase] { (separator | link) [phrase] } */
    List<Phrase> phrases() {
        while (!terms.atEnd()) {
            if (terms.at(Kind.SEPARATOR) || terms.at(Kind.LINK) || terms.at(Kind.MARK) || terms.at(Kind.CLOSE)) {
                terms.advance();
            } else {
                phrase();
            }
        }
        return phrases;
    }

    /** A figure's name wins over a single action, but both readings are kept where both make sense. */
    private void phrase() {
        int start = terms.position();
        Optional<Vocabulary.FigureName> figure = figureName();
        PhraseDraft named = new PhraseDraft(terms.peekAt(start).column());
        figure.ifPresent(name -> named.figure(name.row()));
        clause(named, figure);
        if (figure.isPresent()) {
            int end = terms.position();
            terms.moveTo(start);
            PhraseDraft plain = new PhraseDraft(terms.peekAt(start).column());
            clause(plain, Optional.empty());
            boolean sameWords = terms.position() == end && plain.unknown().isEmpty();
            terms.moveTo(end);
            accept(named, sameWords ? plain.action() : Optional.empty());
        } else {
            accept(named, named.action());
        }
    }

    private void accept(PhraseDraft draft, Optional<Phrase.ActionCall> action) {
        if (draft.isOnlyFeet() && repeatPrevious(draft)) {
            return;
        }
        if (draft.figureCall().isEmpty() && action.isEmpty()) {
            unread(draft);
            return;
        }
        doubtful |= draft.unknown().stream().anyMatch(term -> vocabulary.knows(term.text()));
        draft.unknown().forEach(leftWords::strange);
        phrases.add(draft.phrase(action, true));
        if (draft.figureCall().isEmpty() && draft.feet().size() > 1) {
            addAgain(
                    draft,
                    action.orElseThrow(),
                    draft.feet().subList(1, draft.feet().size()));
        }
    }

    /** Whether words of the trade were left out, so that an action may be missing. */
    boolean isDoubtful() {
        return doubtful;
    }

    private void addAgain(PhraseDraft draft, Phrase.ActionCall action, List<Foot> feet) {
        int last = phrases.size() - 1;
        if (action.isWalkAround()) {
            phrases.set(last, phrases.get(last).repeated(feet.size()));
            return;
        }
        for (Foot foot : feet) {
            phrases.add(draft.phrase(Optional.of(again(action, foot)), true));
        }
    }

    /** "Shuffle back right, left, right": feet that stand alone belong to the figure, or repeat the action. */
    private boolean repeatPrevious(PhraseDraft draft) {
        if (phrases.isEmpty()) {
            return false;
        }
        int last = phrases.size() - 1;
        Phrase previous = phrases.get(last);
        if (previous.figure().isPresent()) {
            List<Foot> feet = new ArrayList<>(previous.figure().get().feet());
            feet.addAll(draft.feet());
            Phrase.FigureCall figure = new Phrase.FigureCall(
                    previous.figure().get().row(),
                    feet,
                    previous.figure().get().ways(),
                    previous.figure().get().turn());
            phrases.set(
                    last,
                    new Phrase(
                            previous.column(),
                            Optional.of(figure),
                            previous.action(),
                            previous.repeats(),
                            previous.duration(),
                            previous.remarks().and(draft.remarks()),
                            true));
            return true;
        }
        previous.action().ifPresent(action -> addAgain(draft, action, draft.feet()));
        return previous.action().isPresent();
    }

    private static Phrase.ActionCall again(Phrase.ActionCall action, Foot foot) {
        return new Phrase.ActionCall(
                Optional.of(foot),
                action.action(),
                PhraseDraft.lateral(action.action(), foot).orElse(action.direction()),
                Optional.empty(),
                action.transfer());
    }

    /** A clause without an action: remarks belong to the one before; anything else is a problem. */
    private void unread(PhraseDraft draft) {
        if (draft.unknown().isEmpty() && draft.isOnlyRemarks()) {
            if (!phrases.isEmpty()) {
                int last = phrases.size() - 1;
                phrases.set(last, phrases.get(last).withRemarks(draft.remarks()));
            }
            return;
        }
        leftWords.noAction(draft.column(), draft.unknown());
        phrases.add(draft.phrase(Optional.empty(), false));
    }

    /** The longest figure name that begins here; feet and small words may stand between its words. */
    private Optional<Vocabulary.FigureName> figureName() {
        int start = terms.position();
        terms.skipWithinName();
        if (terms.atEnd()) {
            terms.moveTo(start);
            return Optional.empty();
        }
        List<Vocabulary.FigureName> names =
                vocabulary.figuresBeginning(terms.peek().meaning());
        terms.moveTo(start);
        return names.stream().filter(name -> terms.matches(name.words())).findFirst();
    }

    /** clause := { foot | verb | part | place | onto | turn | weight | number | remark | filler } */
    private void clause(PhraseDraft draft, Optional<Vocabulary.FigureName> name) {
        int wordsLeft = name.map(figure -> figure.words().size()).orElse(0);
        boolean open = true;
        while (open && !terms.atEnd() && !terms.at(Kind.SEPARATOR) && !terms.at(Kind.LINK)) {
            Term term = terms.peek();
            boolean partOfName = wordsLeft > 0
                    && name.orElseThrow()
                            .words()
                            .get(name.get().words().size() - wordsLeft)
                            .equals(term.meaning());
            if (partOfName) {
                wordsLeft--;
                nameWord(draft, term);
            } else {
                open = word(draft, term);
            }
        }
    }

    private void nameWord(PhraseDraft draft, Term term) {
        terms.advance();
        if (term.is(Kind.FRACTION) || term.is(Kind.TURN)) {
            int mark = terms.position();
            terms.skipOverShoulder();
            Optional<Foot> side = terms.footHere();
            side.ifPresentOrElse(draft::turnSide, () -> terms.moveTo(mark));
        }
    }

    /** Takes one word; false where a new action begins instead. */
    private boolean word(PhraseDraft draft, Term term) {
        return switch (term.kind()) {
            case VERB -> verb(draft, term);
            case WITH -> with(draft);
            case FOOT -> foot(draft, term);
            case PART -> part(draft, term);
            case PLACE -> place(draft, term);
            case ONTO -> onto(draft);
            case TURN, FRACTION -> turn(draft);
            case NUMBER -> number(draft, term);
            case WEIGHT -> weight(draft);
            case NEGATION -> negation(draft);
            case DURING -> during();
            case OPEN -> brackets(draft);
            case CLOCK -> clock(draft, term);
            case FILLER -> filler(draft, term);
            case MARK, COUNT, CLOSE, SEPARATOR, LINK -> terms.advance();
            case FIGURE_WORD, UNKNOWN -> {
                draft.unknown(term);
                yield terms.advance();
            }
        };
    }

    private boolean verb(PhraseDraft draft, Term term) {
        if (!draft.takesVerb(term.meaning())) {
            return false;
        }
        draft.verb(term.meaning());
        return terms.advance();
    }

    /** "vine right with touch" begins another action; "with R" and "with 1/4 turn" do not. */
    private boolean with(PhraseDraft draft) {
        terms.advance();
        return !(draft.hasAction() && terms.at(Kind.VERB));
    }

    private boolean foot(PhraseDraft draft, Term term) {
        terms.advance();
        if (terms.at(Kind.PLACE, "diag")) {
            draft.place("diag");
            return terms.advance();
        }
        draft.foot(term.meaning().equals("left") ? Foot.LEFT : Foot.RIGHT);
        return true;
    }

    private boolean part(PhraseDraft draft, Term term) {
        draft.part(term.meaning());
        return terms.advance();
    }

    /** A place may name the other foot: "over left", "beside R". */
    private boolean place(PhraseDraft draft, Term term) {
        draft.place(term.meaning());
        terms.advance();
        if (term.meaning().equals("over")
                || term.meaning().equals("behind")
                || term.meaning().equals("together")) {
            int before = terms.position();
            terms.skip(Kind.FILLER);
            boolean otherFoot = draft.hasFoot() && terms.footHere().isPresent();
            if (!otherFoot) {
                terms.moveTo(before);
            } else if (terms.at(Kind.PART)) {
                terms.advance();
            }
        }
        return true;
    }

    private boolean onto(PhraseDraft draft) {
        terms.advance();
        terms.skip(Kind.FILLER);
        terms.skip(Kind.PART);
        terms.skip(Kind.FILLER);
        terms.footHere().ifPresent(draft::onto);
        return true;
    }

    /** turn := [turn] [number] fraction [turn] [to | over] [side] | turn side fraction */
    private boolean turn(PhraseDraft draft) {
        int column = terms.peek().column();
        if (terms.at(Kind.TURN, "paddle")) {
            draft.paddle();
        }
        terms.skipWords(Kind.TURN, Kind.FILLER);
        Optional<Foot> side = terms.at(Kind.FOOT) && terms.nextIs(Kind.FRACTION) ? terms.footHere() : Optional.empty();
        int whole = terms.at(Kind.NUMBER) ? terms.number() : 0;
        OptionalInt part = terms.fraction();
        if (part.isEmpty()) {
            draft.openTurn(column);
            if (terms.at(Kind.FRACTION)) {
                draft.unknown(terms.peek());
                terms.advance();
            }
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

    private boolean number(PhraseDraft draft, Term term) {
        int value = terms.number();
        if (terms.at(Kind.COUNT)) {
            terms.advance();
            draft.duration(value);
        } else if (term.text().equals(term.meaning())) {
            draft.number(value);
        } else {
            draft.repeats(value);
        }
        return true;
    }

    private boolean weight(PhraseDraft draft) {
        terms.advance();
        terms.skipWords(Kind.ONTO, Kind.FILLER, Kind.UNKNOWN);
        terms.footHere().ifPresent(draft::weight);
        return true;
    }

    private boolean negation(PhraseDraft draft) {
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

    private boolean brackets(PhraseDraft draft) {
        List<Term> inside = terms.bracketed();
        draft.remark(Remark.read(inside));
        if (!draft.hasFoot()) {
            ListedFeet.read(inside).forEach(foot -> draft.listed(foot.foot(), foot.way()));
        }
        return true;
    }

    private boolean clock(PhraseDraft draft, Term term) {
        draft.remark(Remark.clock(term));
        return terms.advance();
    }

    /** "to right side", "to the R diagonal", "to left": the side is a direction here, no foot. */
    private boolean filler(PhraseDraft draft, Term term) {
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
