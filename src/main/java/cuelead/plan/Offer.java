package cuelead.plan;

import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.Optional;

/**
 * A cue with chosen words and lead: when it would sound.
 *
 * @param startSeconds first audible sample
 * @param endSeconds   last audible sample
 */
record Offer(Cue cue, Phrase phrase, Beats lead, double startSeconds, double centreSeconds, double endSeconds) {
    private static final Beats MOST_LEAD = Beats.of(32);

    /**
     * The offer with at least this lead that leaves the dancers {@link CallPlan#LEAST_ROOM_SECONDS}: where the lead
     * is too short in seconds it grows by half beats. Empty when the words cannot be spoken or no lead will do.
     */
    static Optional<Offer> of(Cue cue, Phrase phrase, Beats lead, BeatGrid grid, WordTimes words) {
        Optional<WordTimes.Length> length = words.of(phrase.words());
        if (length.isEmpty()) {
            return Optional.empty();
        }
        BeatPosition beat = cue.target().at();
        double latestEnd = cue.target().songSeconds() - CallPlan.LEAST_ROOM_SECONDS;
        for (Beats grown = lead; grown.compareTo(MOST_LEAD) <= 0; grown = grown.plus(Beats.HALF)) {
            double centre = grid.secondsAt(beat.minus(grown));
            if (centre + length.get().afterSeconds() <= latestEnd) {
                return Optional.of(new Offer(
                        cue,
                        phrase,
                        grown,
                        centre - length.get().beforeSeconds(),
                        centre,
                        centre + length.get().afterSeconds()));
            }
        }
        return Optional.empty();
    }

    double lengthSeconds() {
        return endSeconds - startSeconds;
    }

    /** Whether this call has ended, with a breath, when the other starts. */
    boolean isBefore(Offer other) {
        return endSeconds + Airtime.GAP_SECONDS <= other.startSeconds;
    }
}
