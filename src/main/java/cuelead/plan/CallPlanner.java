package cuelead.plan;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Makes one call plan: the count-in has its time, what must be said finds its own, then words and figures. Where a turn
 * in full words takes the time of the figure behind it, so that the class would hear its later words only, the plan is
 * made once more with that turn in few words.
 */
final class CallPlanner {
    /** A turn's words are over by its beat, so they can take the time of calls for beats as near as this. */
    private static final Beats NEAR = Beats.of(2);

    private final Timeline timeline;
    private final Extent extent;
    private final CallSettings settings;
    private final WordTimes words;
    private final Cues cues;
    private final Airtime airtime = new Airtime();
    private final List<LeftOut> leftOut = new ArrayList<>();
    /** Figures of which nothing is called before their second count. */
    private final List<Cue> unnamed = new ArrayList<>();

    private CallPlanner(Timeline timeline, Extent extent, CallSettings settings, WordTimes words, Cues cues) {
        this.timeline = timeline;
        this.extent = extent;
        this.settings = settings;
        this.words = words;
        this.cues = cues;
    }

    static CallPlan plan(Timeline timeline, Extent extent, CallSettings settings, WordTimes words) {
        Cues cues = new Cues(timeline, extent, settings);
        CallPlanner inFullWords = new CallPlanner(timeline, extent, settings, words, cues);
        CallPlan plan = inFullWords.plan(Set.of());
        Set<Cue> inTheWay = inFullWords.turnsBeforeUnnamed();
        return inTheWay.isEmpty() ? plan : new CallPlanner(timeline, extent, settings, words, cues).plan(inTheWay);
    }

    private CallPlan plan(Set<Cue> inFewWords) {
        leftOut.addAll(cues.silenced());
        List<Call> calls = new ArrayList<>(countIn());
        Placing.Placed needed = Placing.place(timeline, extent, words, cues.all(), airtime, inFewWords);
        leftOut.addAll(needed.leftOut());
        needed.offers().forEach(offer -> calls.add(take(offer)));
        fitWishes(cues.all()).forEach(offer -> calls.add(take(offer)));
        calls.sort(Comparator.comparingDouble(Call::centreSeconds));
        return new CallPlan(timeline, settings, calls, leftOut);
    }

    private List<Call> countIn() {
        return extent.first(timeline)
                .filter(first -> settings.levelOf(first.run().wall()) != CallLevel.NONE)
                .map(first -> new CountIn(timeline, first, extent.earliestSeconds(), settings, words, airtime))
                .map(countIn -> countIn.words(leftOut))
                .orElse(List.of());
    }

    private Set<Cue> turnsBeforeUnnamed() {
        Set<Cue> turns = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Cue figure : unnamed) {
            cues.all().stream()
                    .filter(cue -> cue.need() == Cue.Need.TURN)
                    .filter(turn ->
                            isNearBefore(turn.target().at(), figure.target().at()))
                    .forEach(turns::add);
        }
        return turns;
    }

    private static boolean isNearBefore(BeatPosition turn, BeatPosition figure) {
        return turn.compareTo(figure) < 0 && figure.since(turn).compareTo(NEAR) <= 0;
    }

    private Call take(Offer offer) {
        airtime.take(offer.startSeconds(), offer.endSeconds());
        return callOf(offer);
    }

    private List<Offer> fitWishes(List<Cue> cues) {
        List<Cue> wishes = cues.stream()
                .filter(cue -> cue.need() == Cue.Need.WISH)
                .sorted(Comparator.comparingDouble(cue -> cue.target().songSeconds()))
                .toList();
        List<WishOffers> offers = wishes.stream()
                .map(cue -> WishOffers.of(cue, timeline, extent, words, airtime))
                .toList();
        List<Optional<Offer>> chosen =
                WordFit.best(offers.stream().map(WishOffers::free).toList());
        for (int i = 0; i < wishes.size(); i++) {
            if (chosen.get(i).isEmpty()) {
                noteUnsaid(wishes.get(i), offers.get(i).whyUnsaid(words));
            }
        }
        return chosen.stream().flatMap(Optional::stream).toList();
    }

    private void noteUnsaid(Cue cue, LeftOut.Reason reason) {
        leftOut.add(LeftOuts.of(cue, reason));
        if (WordCues.beginsFigure(cue.target())) {
            unnamed.add(cue);
        }
    }

    private Call callOf(Offer offer) {
        DancedCount target = offer.cue().target();
        return new Call(
                offer.phrase().words(),
                offer.cue().kind(),
                settings.levelOf(target.run().wall()),
                offer.centreSeconds(),
                offer.startSeconds(),
                offer.endSeconds(),
                OptionalDouble.of(target.songSeconds()),
                offer.lead(),
                target.run().wall(),
                target.section().name(),
                Optional.of(target.count()),
                target.facingBefore());
    }
}
