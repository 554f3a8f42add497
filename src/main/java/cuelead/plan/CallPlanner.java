package cuelead.plan;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Makes one call plan: the first words of the count-in have their time, what must be said finds its own, then words
 * and figures, then the rest of the count-in.
 */
final class CallPlanner {
    /** A figure's name that is only wished for may come so much before its place, at a loss. */
    private static final Beats MOST_EARLY = Beats.ONE;

    private static final double EARLY_BEAT_LOSS = 2;

    private final Timeline timeline;
    private final Extent extent;
    private final CallSettings settings;
    private final WordTimes words;
    private final Airtime airtime = new Airtime();
    private final List<LeftOut> leftOut = new ArrayList<>();

    CallPlanner(Timeline timeline, Extent extent, CallSettings settings, WordTimes words) {
        this.timeline = timeline;
        this.extent = extent;
        this.settings = settings;
        this.words = words;
    }

    CallPlan plan() {
        Cues cues = new Cues(timeline, extent, settings);
        leftOut.addAll(cues.silenced());
        Optional<CountIn> countIn = extent.first(timeline)
                .filter(first -> settings.levelOf(first.run().wall()) != CallLevel.NONE)
                .map(first -> new CountIn(timeline, first, extent.earliestSeconds(), settings, words, airtime));
        List<Call> calls = new ArrayList<>(countIn.map(CountIn::firstWords).orElse(List.of()));
        Placing.Placed needed = Placing.place(timeline, extent, words, cues.all(), airtime);
        leftOut.addAll(needed.leftOut());
        needed.offers().forEach(offer -> calls.add(take(offer)));
        fitWishes(cues.all()).forEach(offer -> calls.add(take(offer)));
        calls.addAll(countIn.map(opening -> opening.lastWords(leftOut)).orElse(List.of()));
        calls.sort(Comparator.comparingDouble(Call::centreSeconds));
        return new CallPlan(timeline, settings, calls, leftOut);
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
        List<List<Offer>> offers = wishes.stream().map(this::freeOffers).toList();
        List<Optional<Offer>> chosen = WordFit.best(offers);
        for (int i = 0; i < wishes.size(); i++) {
            if (!offers.get(i).isEmpty() && chosen.get(i).isEmpty()) {
                leftOut.add(LeftOuts.of(wishes.get(i), LeftOut.Reason.NO_ROOM));
            }
        }
        return chosen.stream().flatMap(Optional::stream).toList();
    }

    /** The phrases of a wish that can be said where nothing else is; notes why there are none. */
    private List<Offer> freeOffers(Cue cue) {
        List<Offer> possible = new ArrayList<>();
        for (Phrase phrase : cue.phrases()) {
            Beats most = phrase.reach() == Phrase.Reach.OR_EARLIER ? MOST_EARLY : Beats.ZERO;
            for (Beats extra = Beats.ZERO; extra.compareTo(most) <= 0; extra = extra.plus(Beats.HALF)) {
                Phrase here = phrase.worthLess(extra.toDecimal() * EARLY_BEAT_LOSS);
                Offer.of(cue, here, cue.lead().plus(extra), timeline.grid(), words)
                        .ifPresent(possible::add);
            }
        }
        List<Offer> free = possible.stream()
                .filter(extent::allows)
                .filter(offer -> airtime.isFree(offer.startSeconds(), offer.endSeconds()))
                .toList();
        if (free.isEmpty()) {
            leftOut.add(LeftOuts.of(cue, whyNone(cue, possible)));
        }
        return free;
    }

    private LeftOut.Reason whyNone(Cue cue, List<Offer> possible) {
        if (possible.stream().anyMatch(extent::allows)) {
            return LeftOut.Reason.GIVES_WAY;
        }
        if (!possible.isEmpty()) {
            return LeftOut.Reason.BEFORE_THE_MUSIC;
        }
        boolean speakable = cue.phrases().stream()
                .anyMatch(phrase -> words.of(phrase.words()).isPresent());
        return speakable ? LeftOut.Reason.TOO_LATE : LeftOut.Reason.NOT_SPEAKABLE;
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
