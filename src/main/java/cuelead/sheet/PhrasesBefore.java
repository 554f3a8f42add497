package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.Phrase.ActionCall;
import cuelead.sheet.Phrase.FigureCall;
import cuelead.sheet.Phrase.Joint;
import cuelead.sheet.Phrase.Remarks;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The phrases of a line so far, with which a clause without an action of its own goes on. */
final class PhrasesBefore {
    private final List<Phrase> phrases;

    /** Changes this list. */
    PhrasesBefore(List<Phrase> phrases) {
        this.phrases = phrases;
    }

    /** The same action with more feet: "step R, L". */
    void addAgain(PhraseDraft draft, ActionCall action, List<Foot> feet) {
        int last = phrases.size() - 1;
        if (action.isWalkAround()) {
            boolean first = action.foot().isEmpty();
            Phrase led = first ? phrases.get(last).ledBy(feet.get(0)) : phrases.get(last);
            phrases.set(last, led.repeated(first ? feet.size() - 1 : feet.size()));
            return;
        }
        for (Foot foot : feet) {
            phrases.add(draft.phrase(Optional.of(again(action, foot))));
        }
    }

    /** "Shuffle back right, left, right": feet that stand alone belong to the figure, or repeat the action. */
    boolean repeat(PhraseDraft draft) {
        if (phrases.isEmpty()) {
            return false;
        }
        int last = phrases.size() - 1;
        Phrase previous = phrases.get(last);
        if (previous.figure().isPresent()) {
            List<Foot> feet = new ArrayList<>(previous.figure().get().feet());
            if (feet.size() == 1
                    && ListedFeet.areAll(
                            draft.feet().size(), previous.figure().get().row())) {
                feet.clear(); // "grapevine right, right-left-right": the side, then its feet
            }
            feet.addAll(draft.feet());
            FigureCall figure = new FigureCall(
                    previous.figure().get().row(),
                    feet,
                    previous.figure().get().ways(),
                    previous.figure().get().turn());
            phrases.set(last, previous.with(figure).withRemarks(draft.remarks()));
            return true;
        }
        previous.action().ifPresent(action -> addAgain(draft, action, draft.feet()));
        return previous.action().isPresent();
    }

    /** "Shuffle forward R, L, R turning 1/2 R": the last foot of the figure, and the turn of all of it. */
    boolean listsLast(PhraseDraft draft) {
        Optional<FigureCall> figure = phrases.isEmpty()
                ? Optional.empty()
                : phrases.get(phrases.size() - 1)
                        .figure()
                        .filter(call -> call.turn().isEmpty() && isAllButLast(call));
        boolean turning = draft.shape().isOnlyFeetTurning() && draft.turns();
        boolean inBrackets = draft.shape().isOnlyFeet() && draft.turnOfAll().isPresent();
        boolean lists = figure.isPresent() && (turning || inBrackets);
        if (lists) {
            FigureCall call = figure.get();
            List<Foot> feet = new ArrayList<>(call.feet());
            feet.addAll(draft.feet());
            int last = phrases.size() - 1;
            phrases.set(
                    last,
                    phrases.get(last)
                            .with(new FigureCall(call.row(), feet, call.ways(), draft.turnOfAll()))
                            .withRemarks(draft.remarks()));
        }
        return lists;
    }

    private static boolean isAllButLast(FigureCall call) {
        List<Foot> feet = call.feet();
        return feet.size() > 1
                && feet.get(0) != feet.get(1)
                && feet.size() + 1 == call.row().figure().pattern().size();
    }

    /** "Swivel heels right, centre", "bump hips right, left": the same again to another side. */
    boolean swingOn(PhraseDraft draft) {
        if (phrases.isEmpty()) {
            return false;
        }
        Optional<ActionCall> before = phrases.get(phrases.size() - 1)
                .action()
                .filter(action -> ActionRules.swings(action.action())
                        && (!draft.shape().isBarePart() || ActionRules.swivels(action.action())));
        before.ifPresent(action -> phrases.add(draft.phrase(Optional.of(new ActionCall(
                action.foot(),
                ActionRules.swungOn(action.action(), draft.part()),
                draft.shape().isBarePart() ? action.direction() : draft.swing(),
                Optional.empty(),
                action.transfer())))));
        return before.isPresent();
    }

    /** "Shuffle RLR with 1/2 turn, moving back": the figure goes there; a step's own way was told with it. */
    void travel(PhraseDraft draft) {
        int last = phrases.size() - 1;
        Phrase before = phrases.get(last);
        before.figure()
                .map(call -> new FigureCall(
                        FigureWays.danced(call.row(), draft.places()), call.feet(), call.ways(), call.turn()))
                .ifPresent(call -> phrases.set(last, before.with(call)));
        phrases.set(last, phrases.get(last).withRemarks(draft.remarks()));
    }

    /** "Rock forward on left, back on right": the weight goes back, and no foot is moved. */
    boolean recovers(PhraseDraft draft) {
        Optional<ActionCall> rock = phrases.isEmpty()
                ? Optional.empty()
                : phrases.get(phrases.size() - 1).action().filter(call -> call.action() == Action.ROCK);
        Optional<Foot> to = draft.shape()
                .weightGoesTo()
                .filter(foot -> rock.isPresent() && !rock.get().foot().equals(Optional.of(foot)));
        to.ifPresent(foot -> phrases.add(draft.phrase(Optional.of(
                new ActionCall(Optional.of(foot), Action.RECOVER, Direction.PLACE, Optional.empty(), Transfer.FULL)))));
        return to.isPresent();
    }

    /** "Turn 1/4 left and put your weight on the left": the turn takes it there. */
    boolean turnsOnto(PhraseDraft draft, Joint joint) {
        int last = phrases.size() - 1;
        boolean turned = last >= 0 && joint != Joint.PARTED && MoveMaker.isTurn(phrases.get(last));
        Optional<Foot> to = draft.shape().weightGoesTo().filter(foot -> turned);
        to.ifPresent(foot -> phrases.set(
                last,
                phrases.get(last)
                        .withRemarks(new Remarks(Optional.empty(), Optional.of(foot), false, false))
                        .withRemarks(draft.remarks())));
        return to.isPresent();
    }

    /** "Vine right, 1/4 turn R on 3": the turn is danced within the figure. */
    boolean turnsWithin(PhraseDraft draft) {
        int last = phrases.size() - 1;
        Optional<FigureCall> figure = last < 0 || !draft.shape().isTurnOnCount()
                ? Optional.empty()
                : phrases.get(last).figure().filter(call -> call.turn().isEmpty());
        figure.ifPresent(call -> phrases.set(
                last,
                phrases.get(last)
                        .with(new FigureCall(call.row(), call.feet(), call.ways(), draft.turnOfAll()))
                        .withRemarks(draft.remarks())));
        return figure.isPresent();
    }

    /** "Pivot 1/4 left, shifting your weight to the left foot": the pivot takes it there. */
    boolean shiftsOnto(PhraseDraft draft) {
        int last = phrases.size() - 1;
        Optional<Foot> to = draft.shape().shiftsTo().filter(foot -> last >= 0 && comesOnto(foot, phrases.get(last)));
        to.ifPresent(foot -> phrases.set(
                last, phrases.get(last).withRemarks(new Remarks(Optional.empty(), Optional.of(foot), false, false))));
        return to.isPresent();
    }

    /** Whether a phrase may end on that foot: a pivot, a turn, a step of its own. */
    private static boolean comesOnto(Foot foot, Phrase phrase) {
        boolean pivots = phrase.figure()
                .filter(call -> call.row().figure().id().startsWith("pivot"))
                .isPresent();
        boolean turns = phrase.action()
                .filter(call -> call.isBareTurn() || TURNING.contains(call.action()))
                .isPresent();
        boolean steps = phrase.action()
                .filter(call ->
                        call.foot().equals(Optional.of(foot)) && call.transfer().takesWeight())
                .isPresent();
        return pivots || turns || steps;
    }

    private static final Set<Action> TURNING = EnumSet.of(Action.PIVOT, Action.UNWIND);

    private static ActionCall again(ActionCall action, Foot foot) {
        return new ActionCall(
                ActionRules.needsNoFoot(action.action()) ? Optional.empty() : Optional.of(foot),
                action.action(),
                DraftMeaning.lateral(action.action(), foot).orElse(action.direction()),
                Optional.empty(),
                action.transfer());
    }

    /** What is said beside the last of them, if there is one. */
    void remark(PhraseDraft draft) {
        int last = phrases.size() - 1;
        if (last >= 0) {
            phrases.set(last, phrases.get(last).withRemarks(draft.remarks()));
        }
    }
}
