package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.FigureNames.FigureName;
import cuelead.sheet.Phrase.Joint;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Reads the prose of a count line: actions and figures, parted by commas, "and", "then". Each rule of the grammar is
 * one method; words that are not understood become problems and reading goes on at the next action.
 */
final class ProseParser {
    /** What the feet do while arms or head move. */
    private static final Phrase.ActionCall STILL =
            new Phrase.ActionCall(Optional.empty(), Action.HOLD, Direction.NONE, Optional.empty(), Transfer.NONE);

    private final Vocabulary vocabulary;
    private final LeftWords leftWords;
    private final TermCursor terms;
    private final List<Phrase> phrases = new ArrayList<>();
    private final PhrasesBefore before = new PhrasesBefore(phrases);
    private boolean doubtful;
    /** Feet that are told before what they do: "starting with left", "LF, RF, LF shuffle forward". */
    private final List<Foot> leads = new ArrayList<>();

    private Joint joint = Joint.PARTED;

    ProseParser(Vocabulary vocabulary, Problems problems, int line, List<Term> terms) {
        this.vocabulary = vocabulary;
        this.leftWords = new LeftWords(vocabulary, problems, line);
        this.terms = new TermCursor(terms);
        terms.forEach(leftWords::misspelt);
    }

    /** line := [phrase] { (separator | link) [phrase] } */
    List<Phrase> phrases() {
        while (!terms.atEnd()) {
            if (terms.at(Kind.SEPARATOR) || terms.at(Kind.LINK) || terms.at(Kind.MARK) || terms.at(Kind.CLOSE)) {
                ampersand();
                joint = terms.at(Kind.SEPARATOR) ? Joint.PARTED : joint == Joint.RUN_ON ? Joint.LINKED : joint;
                terms.advance();
            } else if (!phrases.isEmpty() && joint == Joint.PARTED && Easier.begins(terms.textHere())) {
                leftWords.styling(terms.peek());
                terms.rest();
            } else {
                phrase();
                joint = Joint.RUN_ON;
            }
        }
        return phrases;
    }

    private void ampersand() {
        if (terms.at(Kind.LINK) && terms.peek().text().equals("&")) {
            Ampersands.step(phrases, terms.peek().column()).ifPresent(phrases::add);
        }
    }

    /** A figure's name wins over a single action, but both readings are kept where both make sense. */
    private void phrase() {
        int times = times();
        int start = terms.position();
        Optional<FigureName> figure = figureName();
        PhraseDraft named = draft(start, times);
        figure.ifPresent(name -> named.figure(name.row()));
        clause(named).read(figure);
        if (tellsWhoBearsWeight(start)) {
            return;
        }
        figure.flatMap(name -> vocabulary.figureNames().with(name.words(), named.around()))
                .ifPresent(named::figure);
        if (figure.isPresent()) {
            int end = terms.position();
            terms.moveTo(start);
            PhraseDraft plain = draft(start, times);
            clause(plain).read(Optional.empty());
            boolean sameWords = terms.position() == end && plain.unknown().isEmpty();
            terms.moveTo(end);
            accept(named, sameWords ? plain.action() : Optional.empty());
            told(figure.get());
        } else {
            named.lineStart().filter(foot -> phrases.isEmpty()).ifPresent(named::foot);
            accept(named, named.action());
        }
    }

    /** "Vine right: right, left behind, right", "toe strut R: toe, heel": what stands behind the colon tells the figure's own steps. */
    private void told(FigureName name) {
        if (terms.atEnd() || !terms.peek().text().equals(":")) {
            return;
        }
        int mark = terms.position();
        List<Term> rest = terms.rest();
        for (int end = rest.size(); end > 1; end--) {
            boolean clauseEnds = end == rest.size() || ListedFeet.isParting(rest.get(end));
            if (clauseEnds && ListedFeet.tells(rest.subList(0, end), name.row())) {
                terms.moveTo(mark + end);
                return;
            }
        }
        terms.moveTo(mark);
    }

    private PhraseDraft draft(int start, int times) {
        PhraseDraft draft = new PhraseDraft(terms.peekAt(start).column());
        draft.repeats(times);
        draft.joint(joint);
        return draft;
    }

    /** "2 R kick ball changes", "two sailor steps". */
    private int times() {
        boolean counted = terms.at(Kind.NUMBER)
                && figureName().isEmpty()
                && (terms.nextIs(Kind.FOOT)
                        || terms.nextIs(Kind.FIGURE_WORD)
                        || terms.nextIs(Kind.VERB)
                        || terms.nextIs(Kind.PART)
                        || terms.nextIs(Kind.FRACTION));
        return counted ? terms.number() : 1;
    }

    private ClauseReader clause(PhraseDraft draft) {
        return new ClauseReader(terms, leftWords, draft);
    }

    /** "Both stomps take the weight": of steps that stand before. */
    private boolean tellsWhoBearsWeight(int start) {
        List<Term> clause =
                IntStream.range(start, terms.position()).mapToObj(terms::peekAt).toList();
        boolean dances = clause.stream().map(Term::kind).anyMatch(DANCES::contains);
        return THESE.contains(clause.get(0).text())
                && !dances
                && clause.stream().anyMatch(term -> term.is(Kind.WEIGHT));
    }

    private static final Set<Kind> DANCES = EnumSet.of(Kind.FOOT, Kind.FRACTION, Kind.TURN, Kind.PLACE);
    private static final Set<String> THESE = Set.of("both", "these", "those", "all");

    /** "Weave to the left, R over L first": the figure before begins so. */
    private boolean tellsHowItBegins(Optional<Phrase.ActionCall> action) {
        return action.isPresent()
                && !phrases.isEmpty()
                && phrases.get(phrases.size() - 1).figure().isPresent()
                && terms.peekAt(terms.position() - 1).text().equals("first");
    }

    private void accept(PhraseDraft draft, Optional<Phrase.ActionCall> action) {
        draft.lineStart()
                .filter(foot -> !phrases.isEmpty())
                .ifPresent(foot -> phrases.set(0, phrases.get(0).ledBy(foot)));
        if (draft.shape().isOnlyState() || tellsHowItBegins(action)) {
            return;
        }
        if (draft.shape().isOnlyBody()) {
            phrases.add(draft.phrase(Optional.of(STILL)));
            return;
        }
        if (draft.shape().isOnlyTravel() && !phrases.isEmpty()) {
            before.travel(draft);
            return;
        }
        if (WalkAround.ends(draft, phrases) || before.listsLast(draft)) {
            return;
        }
        if (draft.shape().isOnlyLead() || (draft.shape().isOnlyFeet() && !before.repeat(draft) && phrases.isEmpty())) {
            leads.addAll(draft.feet());
            return;
        }
        if (draft.shape().isOnlyFeet()) {
            return;
        }
        draft.leads(leads);
        leads.clear();
        if ((draft.shape().isOnlyPlaces()
                        || draft.shape().isOnlyParts()
                        || draft.shape().isBarePart())
                && before.swingOn(draft)) {
            return;
        }
        if (before.recovers(draft)
                || before.turnsOnto(draft, joint)
                || before.shiftsOnto(draft)
                || before.turnsWithin(draft)) {
            return;
        }
        Optional<Phrase.FigureCall> figure = draft.figureCall();
        if (figure.isEmpty() && action.isEmpty()) {
            unread(draft);
            return;
        }
        Optional<Phrase> around = WalkAround.of(draft, action);
        if (around.isPresent()) {
            phrases.add(around.get());
            return;
        }
        doubtful |= draft.unknown().stream().anyMatch(term -> vocabulary.knows(term.text()));
        draft.unknown().forEach(term -> leftWords.strange(term, draft.shape().isClear()));
        Phrase phrase = draft.phrase(action);
        int listed = draft.feet().size() + terms.feetListedAhead();
        boolean counted = phrase.repeats() == listed && !draft.repeatsFoot();
        boolean oneEach = listed > 1 && draft.feet().size() == 1 && counted;
        phrases.add(oneEach ? phrase.repeated(1 - listed) : phrase);
        if (figure.isEmpty() && draft.feet().size() > 1) {
            before.addAgain(
                    draft,
                    action.orElseThrow(),
                    draft.feet().subList(1, draft.feet().size()));
        }
    }

    /** Whether words of the trade were left out, so that an action may be missing. */
    boolean isDoubtful() {
        return doubtful;
    }

    /** A clause without an action: remarks belong to the one before; anything else is a problem. */
    private void unread(PhraseDraft draft) {
        if (draft.unknown().isEmpty() && draft.shape().isOnlyRemarks()) {
            before.remark(draft);
            return;
        }
        phrases.add(draft.phrase(Optional.empty()));
    }

    /** The longest figure name that begins here, or behind words that only say how the figure is danced. */
    private Optional<FigureName> figureName() {
        int start = terms.position();
        Optional<FigureName> found = Optional.empty();
        boolean goesOn = true;
        while (found.isEmpty() && goesOn) {
            int here = terms.position();
            terms.skipWithinName();
            List<FigureName> names = terms.atEnd()
                    ? List.of()
                    : vocabulary.figureNames().beginningWith(terms.peek().meaning());
            terms.moveTo(here);
            found = names.stream()
                    .filter(name -> here == start || name.isDistinct())
                    .filter(name -> terms.matches(name.words()))
                    .findFirst();
            terms.skipWithinName();
            goesOn = terms.skipModifier();
        }
        terms.moveTo(start);
        return found;
    }
}
