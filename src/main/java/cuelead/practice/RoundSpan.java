package cuelead.practice;

import cuelead.dance.Counts;
import cuelead.lesson.Pass;
import cuelead.lesson.Pass.Over;
import cuelead.lesson.Piece;
import cuelead.lesson.PiecePlace;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.plan.Title;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * When a round is heard on the time line of its own beats.
 *
 * @param place          what is danced
 * @param runUpSeconds   the first beat of its run-up, in which it is announced and counted in
 * @param to             the count at which calls end; empty = with the dance
 * @param fromFrame      the first frame
 * @param quietFromFrame from here on no click is heard
 * @param toFrame        the frame at which the next round may begin
 */
record RoundSpan(
        PiecePlace place,
        double runUpSeconds,
        Optional<BeatPosition> to,
        long fromFrame,
        long quietFromFrame,
        long toFrame) {
    /** One round leads into the next this long before a beat, so that no click or drum is cut. */
    private static final double BEFORE_BEAT_SECONDS = 0.02;
    /** The first time: to say what comes and its first figure before the count-in, and to get ready. */
    private static final double LEAST_RUN_UP_SECONDS = 6;

    /** The same, where beats are slow, and for each repeat: the first figure comes six before, "again" before that. */
    private static final Beats LEAST_RUN_UP = Beats.of(8);

    private static final int MOST_EIGHTS = 4;
    /** After a pass to clicks, to get ready again (common practice, no source). */
    private static final double REST_SECONDS = 1.5;

    /** Empty where the piece is not danced, or the music has ended before. */
    static Optional<RoundSpan> of(Pass pass, int repeat, Timeline timeline, SampleRate rate) {
        return PiecePlace.of(pass.piece(), timeline).map(place -> {
            double runUp = timeline.grid().secondsAt(runUp(place.from(), repeat, timeline));
            return pass.piece() instanceof Piece.WholeDance && pass.over() == Over.MUSIC
                    ? wholeSong(place, timeline, rate)
                    : piece(pass, repeat, place, runUp, timeline, rate);
        });
    }

    private static RoundSpan wholeSong(PiecePlace place, Timeline timeline, SampleRate rate) {
        long end = rate.frameAt(timeline.endSeconds());
        double first = timeline.grid().secondsAt(Landing.beatFrom(timeline.grid(), 0));
        return new RoundSpan(place, first, Optional.empty(), 0, end, end);
    }

    private static RoundSpan piece(
            Pass pass, int repeat, PiecePlace place, double runUp, Timeline timeline, SampleRate rate) {
        long from = rate.frameAt(runUp - BEFORE_BEAT_SECONDS);
        long beat = rate.frameAt(timeline.grid().secondsAt(place.to()));
        boolean isRested = repeat == pass.times() && pass.over() == Over.CLICKS;
        long to = beat + (isRested ? rate.frameAt(REST_SECONDS) : -rate.frameAt(BEFORE_BEAT_SECONDS));
        return new RoundSpan(place, runUp, Optional.of(place.to()), from, beat + 1, to);
    }

    /** Whole eights, or sixes, the first time; then no more bars than have room for "again" and the count-in. */
    private static BeatPosition runUp(BeatPosition first, int repeat, Timeline timeline) {
        Beats eight =
                timeline.beatsOf(Counts.of(timeline.dance().header().metre().countsInSection()));
        double firstSeconds = timeline.grid().secondsAt(first);
        Beats bar = timeline.beatsOf(Counts.of(timeline.dance().header().metre().beatsInBar()));
        Beats piece = repeat == 1 ? eight : bar;
        BeatPosition at = first.minus(eight);
        double leastSeconds = repeat == 1 ? LEAST_RUN_UP_SECONDS : 0;
        for (int pieces = 1; pieces < MOST_EIGHTS; pieces++) {
            boolean isLongEnough = first.since(at).compareTo(LEAST_RUN_UP) >= 0;
            if (isLongEnough && firstSeconds - timeline.grid().secondsAt(at) >= leastSeconds) {
                break;
            }
            at = at.minus(piece);
        }
        return at;
    }

    /** What is called: from the beginning of the run-up on. */
    Extent extent(Title title) {
        return new Extent(place.from(), to, Math.max(runUpSeconds, Extent.EARLIEST_SECONDS), Optional.of(title));
    }
}
