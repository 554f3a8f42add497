package cuelead.plan;

import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the time of the calls that must be made: turns first, then sections, walls, announcements, early warnings
 * (see {@link Cue.Need}). Each takes the cheapest free place: near its lead, in its fullest words that are not too long.
 */
final class Placing {
    private static final Beats MOST_EXTRA_LEAD = Beats.of(12);
    /** A beat earlier than wanted costs 1; saying the next shorter words costs this. */
    private static final double SHORTER_WORDS_COST = 1.2;
    /** Words longer than this many beats take the place of others' words; each beat more costs 1.5. */
    private static final double EASY_BEATS = 1.7;

    private static final double LONG_WORDS_COST = 1.5;
    /** An early warning comes once the wall has begun to be danced. */
    private static final Beats AFTER_WALL_START = Beats.of(1);

    private final Timeline timeline;
    private final WordTimes words;
    private final Airtime airtime;
    private final List<LeftOut> leftOut;

    Placing(Timeline timeline, WordTimes words, Airtime airtime, List<LeftOut> leftOut) {
        this.timeline = timeline;
        this.words = words;
        this.airtime = airtime;
        this.leftOut = leftOut;
    }

    /** Places every cue that is more than a wish, in order of need, then of time. */
    List<Offer> place(List<Cue> cues) {
        List<Offer> placed = new ArrayList<>();
        cues.stream()
                .filter(cue -> cue.need() != Cue.Need.WISH)
                .sorted(Comparator.comparing(Cue::need))
                .forEach(cue -> bestOf(cue).ifPresent(offer -> {
                    airtime.take(offer.startSeconds(), offer.endSeconds());
                    placed.add(offer);
                }));
        return placed;
    }

    private Optional<Offer> bestOf(Cue cue) {
        List<Offer> offers = cue.need() == Cue.Need.EARLY_WARNING ? earlyOffers(cue) : offers(cue);
        Offer best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Offer offer : offers) {
            double cost = costOf(offer);
            if (cost < least && offer.startsInMusic() && airtime.isFree(offer.startSeconds(), offer.endSeconds())) {
                best = offer;
                least = cost;
            }
        }
        if (best == null) {
            leftOut.add(reasonFor(cue, offers));
        }
        return Optional.ofNullable(best);
    }

    private List<Offer> offers(Cue cue) {
        List<Offer> offers = new ArrayList<>();
        for (Phrase phrase : cue.phrases()) {
            for (Beats extra = Beats.ZERO; extra.compareTo(MOST_EXTRA_LEAD) <= 0; extra = extra.plus(Beats.HALF)) {
                Offer.of(cue, phrase, cue.lead().plus(extra), timeline.grid(), words)
                        .ifPresent(offers::add);
            }
        }
        return offers;
    }

    /** Every half beat from the start of the wall that is to be broken off, or followed by a tag. */
    private List<Offer> earlyOffers(Cue cue) {
        Run coming = cue.target().run();
        Run wall = timeline.runs().get(timeline.runs().indexOf(coming) - 1);
        BeatPosition latest = cue.target().at().minus(cue.lead());
        List<Offer> offers = new ArrayList<>();
        for (Phrase phrase : cue.phrases()) {
            BeatPosition at = wall.start().plus(AFTER_WALL_START);
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
        double shorter = offer.cue().phrases().indexOf(offer.phrase()) * SHORTER_WORDS_COST;
        double tooLong = Math.max(0, lengthBeats(offer) - EASY_BEATS) * LONG_WORDS_COST;
        return early + shorter + tooLong;
    }

    private double lengthBeats(Offer offer) {
        BeatGrid grid = timeline.grid();
        return grid.positionAt(offer.endSeconds())
                .since(grid.positionAt(offer.startSeconds()))
                .toDecimal();
    }

    private LeftOut reasonFor(Cue cue, List<Offer> offers) {
        boolean speakable = cue.phrases().stream()
                .anyMatch(phrase -> words.of(phrase.words()).isPresent());
        LeftOut.Reason reason = !speakable
                ? LeftOut.Reason.NOT_SPEAKABLE
                : offers.stream().noneMatch(Offer::startsInMusic)
                        ? LeftOut.Reason.BEFORE_THE_MUSIC
                        : LeftOut.Reason.NO_ROOM;
        return LeftOuts.of(cue, reason);
    }
}
