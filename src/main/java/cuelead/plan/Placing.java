package cuelead.plan;

import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the time of the calls that must be made. The sheet's own words come first; then turns and sections, the last first:
 * each takes the cheapest free place, near its lead and in its fullest words that are not too long, so that where time is
 * short it is the earlier call that comes earlier. None of them comes long before what it tells: rather is it left out.
 * Then walls, restarts and tags, before the calls of the count that they are for; early warnings take what is left of their
 * wall.
 */
final class Placing {
    private static final Beats MOST_EXTRA_LEAD = Beats.of(12);
    /** The sheet's own words are wanted at their count; a turn that is called much too early is danced too early. */
    private static final Beats MOST_EXTRA_OF_OWN_WORDS = Beats.ONE;

    private static final Beats MOST_EXTRA_OF_TURNS = Beats.of(2);
    /** Where beats are short: a class does not forget a call within a second. */
    private static final double REMEMBERED_SECONDS = 1;
    /** Calls for beats as close as this stand in each other's way. */
    private static final Beats NEAR = Beats.of(8);
    /** A beat earlier than wanted costs 1; saying the next shorter words costs this. */
    private static final double SHORTER_WORDS_COST = 0.8;
    /** Words longer than a beat take the place of others' words; each beat more costs this. */
    private static final double LONG_WORDS_COST = 1.5;
    /** The wall that a turn ends at is worth the place of another's word, and so is how far a wall is danced. */
    private static final Map<Cue.Need, Double> EASY_BEATS = Map.of(Cue.Need.TURN, 1.7, Cue.Need.EARLY_WARNING, 3.0);

    private static final Comparator<Cue> LAST_FIRST = Comparator.<Cue, Boolean>comparing(
                    cue -> cue.need() != Cue.Need.OWN_WORD)
            .thenComparing(cue -> !cue.isOfTheMoment())
            .thenComparing(cue -> cue.need() == Cue.Need.EARLY_WARNING)
            .thenComparing(cue -> cue.target().at(), Comparator.reverseOrder())
            .thenComparing(Cue::need);

    private final Timeline timeline;
    private final Extent extent;
    private final WordTimes words;
    /** Cues that are said in their shortest words, to make room for one that found none. */
    private final Set<Cue> terse;

    private final Airtime airtime;
    private final List<Offer> placed = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final List<Cue> crowdedOut = new ArrayList<>();

    private Placing(Timeline timeline, Extent extent, WordTimes words, Airtime taken, Set<Cue> terse) {
        this.extent = extent;
        airtime = new Airtime(taken);
        this.timeline = timeline;
        this.words = words;
        this.terse = terse;
    }

    /**
     * What was placed.
     *
     * @param offers  of every cue that is more than a wish and has found a time
     * @param leftOut the others
     */
    record Placed(List<Offer> offers, List<LeftOut> leftOut) {}

    /**
     * Places every cue that is more than a wish. Where one finds no room, all that is said around it is said in fewer
     * words, and everything is placed anew.
     *
     * @param taken when nothing can be said; is left as it is
     * @param inFewWords what is said in the fewest words from the start
     */
    static Placed place(
            Timeline timeline, Extent extent, WordTimes words, List<Cue> cues, Airtime taken, Set<Cue> inFewWords) {
        List<Cue> needed = cues.stream()
                .filter(cue -> cue.need() != Cue.Need.WISH)
                .sorted(LAST_FIRST)
                .toList();
        Set<Cue> terse = Collections.newSetFromMap(new IdentityHashMap<>());
        terse.addAll(inFewWords);
        while (true) {
            Placing placing = new Placing(timeline, extent, words, taken, terse);
            needed.forEach(placing::place);
            if (!terse.addAll(placing.aroundCrowdedOut(needed))) {
                return new Placed(placing.placed, placing.leftOut);
            }
        }
    }

    private List<Cue> aroundCrowdedOut(List<Cue> needed) {
        return needed.stream()
                .filter(cue -> crowdedOut.stream().anyMatch(out -> isNear(cue, out)))
                .toList();
    }

    private static boolean isNear(Cue cue, Cue other) {
        Beats apart = cue.target().at().compareTo(other.target().at()) > 0
                ? cue.target().at().since(other.target().at())
                : other.target().at().since(cue.target().at());
        return apart.compareTo(NEAR) <= 0;
    }

    private void place(Cue cue) {
        List<Offer> offers = cue.need() == Cue.Need.EARLY_WARNING ? earlyOffers(cue) : offers(cue);
        Optional<Offer> best = offers.stream()
                .filter(extent::allows)
                .filter(offer -> cue.isOfTheMoment() || isBeforeItsMoment(offer))
                .filter(offer -> airtime.isFree(offer.startSeconds(), offer.endSeconds()))
                .min(Comparator.comparingDouble(this::costOf));
        if (best.isPresent()) {
            airtime.take(best.get().startSeconds(), best.get().endSeconds());
            placed.add(best.get());
            return;
        }
        LeftOut.Reason reason = reasonFor(cue, offers);
        leftOut.add(LeftOuts.of(cue, reason));
        if (reason == LeftOut.Reason.NO_ROOM) {
            crowdedOut.add(cue);
        }
    }

    /** "Wall two" is said before what its first count is called. */
    private boolean isBeforeItsMoment(Offer offer) {
        return placed.stream()
                .filter(other -> other.cue().isOfTheMoment())
                .filter(other ->
                        other.cue().target().at().equals(offer.cue().target().at()))
                .allMatch(offer::isBefore);
    }

    private List<Phrase> phrases(Cue cue) {
        List<Phrase> all = cue.phrases();
        return terse.contains(cue) ? all.subList(all.size() - 1, all.size()) : all;
    }

    private List<Offer> offers(Cue cue) {
        List<Offer> offers = new ArrayList<>();
        Beats most = mostExtraLead(cue);
        for (Phrase phrase : phrases(cue)) {
            for (Beats extra = Beats.ZERO; extra.compareTo(most) <= 0; extra = extra.plus(Beats.HALF)) {
                Offer.of(cue, phrase, cue.lead().plus(extra), timeline.grid(), words)
                        .ifPresent(offers::add);
            }
        }
        return offers;
    }

    private Beats mostExtraLead(Cue cue) {
        if (!cue.isOfTheMoment()) {
            return MOST_EXTRA_LEAD;
        }
        if (cue.need() == Cue.Need.OWN_WORD) {
            return MOST_EXTRA_OF_OWN_WORDS;
        }
        double beats = REMEMBERED_SECONDS * timeline.grid().medianTempo().beatsPerMinute() / 60;
        Beats remembered = Beats.ofDecimal(Math.ceil(beats * 2) / 2);
        return remembered.compareTo(MOST_EXTRA_OF_TURNS) > 0 ? remembered : MOST_EXTRA_OF_TURNS;
    }

    /** Every half beat from the start of the wall that is to be broken off, or followed by a tag. */
    private List<Offer> earlyOffers(Cue cue) {
        Run coming = cue.target().run();
        Run wall = timeline.runs().get(timeline.runs().indexOf(coming) - 1);
        BeatPosition latest = cue.target().at().minus(cue.lead());
        List<Offer> offers = new ArrayList<>();
        for (Phrase phrase : phrases(cue)) {
            BeatPosition at = wall.start();
            for (; at.compareTo(latest) < 0; at = at.plus(Beats.HALF)) {
                Offer.of(cue, phrase, cue.target().at().since(at), timeline.grid(), words)
                        .ifPresent(offers::add);
            }
        }
        return offers;
    }

    private double costOf(Offer offer) {
        double early = offer.lead().minus(offer.cue().lead()).toDecimal();
        if (offer.cue().need() == Cue.Need.EARLY_WARNING) {
            early = -early;
        }
        double shorter = (offer.cue().phrases().get(0).worth() - offer.phrase().worth()) * SHORTER_WORDS_COST;
        double easyBeats = EASY_BEATS.getOrDefault(offer.cue().need(), 1.0);
        double tooLong = Math.max(0, lengthBeats(offer) - easyBeats) * LONG_WORDS_COST;
        return early + shorter + tooLong;
    }

    private double lengthBeats(Offer offer) {
        BeatGrid grid = timeline.grid();
        return grid.positionAt(offer.endSeconds())
                .since(grid.positionAt(offer.startSeconds()))
                .toDecimal();
    }

    private LeftOut.Reason reasonFor(Cue cue, List<Offer> offers) {
        boolean speakable = cue.phrases().stream()
                .anyMatch(phrase -> words.of(phrase.words()).isPresent());
        if (!speakable) {
            return LeftOut.Reason.NOT_SPEAKABLE;
        }
        return offers.stream().noneMatch(extent::allows) ? LeftOut.Reason.BEFORE_THE_MUSIC : LeftOut.Reason.NO_ROOM;
    }
}
