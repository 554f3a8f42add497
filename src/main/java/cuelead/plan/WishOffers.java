package cuelead.plan;

import cuelead.time.BeatGrid;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * When a word or a figure that is wished for, not needed, could be said.
 *
 * @param onTime those at its place or earlier
 * @param allowed those of them that lie within what is called
 * @param punctual those of them that meet nothing that must be said
 * @param free   the same; where there are none, those that come late and meet nothing
 */
record WishOffers(Cue cue, List<Offer> onTime, List<Offer> allowed, List<Offer> punctual, List<Offer> free) {
    /** A figure's name may come so much before its place, at a loss. */
    private static final Beats MOST_EARLY = Beats.ONE;

    private static final double EARLY_BEAT_LOSS = 3;

    /** @param taken when something that must be said is said */
    static WishOffers of(Cue cue, Timeline timeline, Extent extent, WordTimes words, Airtime taken) {
        Predicate<Offer> isFree = offer -> taken.isFree(offer.startSeconds(), offer.endSeconds());
        List<Offer> onTime = onTime(cue, timeline.grid(), words);
        List<Offer> allowed = onTime.stream().filter(extent::allows).toList();
        List<Offer> punctual = allowed.stream().filter(isFree).toList();
        Stream<Offer> late =
                late(cue, timeline.grid(), words).filter(extent::allows).filter(isFree);
        return new WishOffers(
                cue,
                onTime,
                allowed,
                punctual,
                Stream.concat(punctual.stream(), late).toList());
    }

    private static List<Offer> onTime(Cue cue, BeatGrid grid, WordTimes words) {
        List<Offer> offers = new ArrayList<>();
        for (Phrase phrase : cue.phrases()) {
            Beats most = phrase.reach() == Phrase.Reach.OR_EARLIER ? MOST_EARLY : Beats.ZERO;
            for (Beats extra = Beats.ZERO; extra.compareTo(most) <= 0; extra = extra.plus(Beats.HALF)) {
                Phrase here = phrase.worthLess(extra.toDecimal() * EARLY_BEAT_LOSS);
                Offer.of(cue, here, cue.lead().plus(extra), grid, words).ifPresent(offers::add);
            }
        }
        return offers;
    }

    /** Half a beat late, the beginning of a figure: its later words would mislead without it. */
    private static Stream<Offer> late(Cue cue, BeatGrid grid, WordTimes words) {
        Beats lead = cue.lead().minus(Beats.HALF);
        boolean isPossible = WordCues.beginsFigure(cue.target()) && lead.compareTo(Beats.ONE) >= 0;
        return isPossible
                ? cue.phrases().stream().flatMap(phrase -> Offer.of(cue, phrase, lead, grid, words).stream())
                : Stream.empty();
    }

    /** Why nothing is said, where none of them was chosen. */
    LeftOut.Reason whyUnsaid(WordTimes words) {
        if (!punctual.isEmpty()) {
            return LeftOut.Reason.NO_ROOM;
        }
        if (!allowed.isEmpty()) {
            return LeftOut.Reason.GIVES_WAY;
        }
        if (!onTime.isEmpty()) {
            return LeftOut.Reason.BEFORE_THE_MUSIC;
        }
        boolean speakable = cue.phrases().stream()
                .anyMatch(phrase -> words.of(phrase.words()).isPresent());
        return speakable ? LeftOut.Reason.TOO_LATE : LeftOut.Reason.NOT_SPEAKABLE;
    }
}
