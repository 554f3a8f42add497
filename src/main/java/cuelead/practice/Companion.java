package cuelead.practice;

import cuelead.sound.Change;
import cuelead.sound.HeardAt;
import cuelead.sound.LiveMix;
import cuelead.sound.MixPlan;
import cuelead.sound.Nudged;
import cuelead.sound.Route;
import cuelead.sound.Route.Piece;
import cuelead.sound.Speakers;
import cuelead.sound.StemMix.Stem;
import cuelead.time.SampleRate;
import java.util.Optional;
import java.util.Set;

/**
 * An output that is kept in step with the main one. The main one is never moved: where one of the two was lost and is
 * back, this one takes up the main one's place.
 */
final class Companion {
    private static final double NANOS_A_SECOND = 1e9;
    /** Smaller distances are left alone; listeners bear twenty times as much between two loudspeakers. */
    private static final double SMALL_SECONDS = 0.001;
    /** Larger ones are not made up by leaving out silence. */
    private static final double LARGE_SECONDS = 1;
    /** Longer than a jump takes to be heard on both. */
    private static final double LARGE_FOR_SECONDS = 3;
    /** Until what was moved is heard, and the devices know how late they are. */
    private static final double SETTLING_SECONDS = 0.4;
    /** Later distances come from clocks that run differently. */
    private static final double STARTING_SECONDS = 5;

    private final Speakers speakers;
    private final Set<Stem> stems;
    private final SampleRate rate;
    private final Distance distance = new Distance();
    private LiveMix mix;
    private Nudged nudged;
    private long wantedFrames;
    private long skippedFrames;
    private Start start = Start.WITH_THE_MAIN;
    /** By how much later this one had to begin than the main one to be in step, beyond the delays. */
    private long usualLaterFrames;

    private long settledFrame;
    private long largeFromFrame;
    private long lastMainFrame;
    private boolean isTorn;

    private enum Start {
        WITH_THE_MAIN,
        AFTER_IT
    }

    /**
     * What is played.
     *
     * @param number as {@link Change#number}
     */
    record Leg(int number, MixPlan plan, Optional<Change.Loop> loop) {}

    /** @param stems which parts are heard here */
    Companion(Speakers speakers, Set<Stem> stems, SampleRate rate) {
        this.speakers = speakers;
        this.stems = stems;
        this.rate = rate;
    }

    Speakers speakers() {
        return speakers;
    }

    /** Begins at the same time as the main output and at the same frame. */
    void begin(Leg leg, long startFrame, Delays delays) {
        start = Start.WITH_THE_MAIN;
        settledFrame = rate.frameAt(SETTLING_SECONDS);
        play(leg, startFrame, usualLaterFrames - rate.frameAt(delays.apartSeconds()));
    }

    private void play(Leg leg, long startFrame, long laterFrames) {
        skippedFrames = Math.max(0, -laterFrames);
        long from = startFrame + skippedFrames;
        MixPlan plan = leg.loop().isPresent() ? leg.plan() : leg.plan().withoutClipsBefore(from);
        mix = new LiveMix(leg.number(), plan, from, leg.loop(), stems);
        nudged = new Nudged(mix);
        largeFromFrame = Long.MAX_VALUE;
        isTorn = false;
        wantedFrames = 0;
        moveBy(Math.max(0, laterFrames));
        speakers.play(nudged, 0);
    }

    void change(Change change) {
        mix.change(change);
    }

    /** Is so much later from now on; earlier when below 0. */
    void moveBy(long laterFrames) {
        wantedFrames += laterFrames;
        nudged.moveTo(wantedFrames);
        distance.forget();
    }

    Route route() {
        return mix.route();
    }

    long nextFrame() {
        return mix.nextFrame();
    }

    /** The frame of its own output, without what it was moved by, that leaves this computer now. */
    long leavingFrame() {
        return Math.max(0, speakers.heardFrame() - nudged.movedFrames());
    }

    /** To be called some times a second. */
    void follow(Speakers main, LiveMix mainMix, Leg leg, Delays delays) {
        HeardAt mainAt = main.heardAt();
        if (main.isDeviceLost() || speakers.isDeviceLost()) {
            isTorn = true;
        } else if (isTorn) {
            rejoin(mainAt, mainMix, leg, delays);
        } else if (isSettled(mainAt)) {
            compare(mainAt, mainMix, delays);
        }
    }

    private boolean isSettled(HeardAt mainAt) {
        if (nudged.movedFrames() != wantedFrames) {
            settledFrame = mainAt.frame() + rate.frameAt(SETTLING_SECONDS);
        }
        boolean isNew = mainAt.frame() != lastMainFrame;
        lastMainFrame = mainAt.frame();
        return isNew && mainAt.frame() >= settledFrame;
    }

    private void compare(HeardAt mainAt, LiveMix mainMix, Delays delays) {
        HeardAt at = speakers.heardAt();
        Piece mainPiece = mainMix.route().pieceAt(mainAt.frame());
        long given = at.frame() - nudged.movedFrames();
        Piece piece = mix.route().pieceAt(given);
        if (piece.change() != mainPiece.change()) {
            distance.forget(); // one of them has gone over to another place, and the other not yet
            return;
        }
        double ahead = rate.secondsAt(piece.songFrameAt(given) - mainPiece.songFrameAt(mainAt.frame()))
                - (at.nanos() - mainAt.nanos()) / NANOS_A_SECOND
                - delays.apartSeconds();
        if (Math.abs(ahead) > LARGE_SECONDS) {
            distance.forget();
            largeFromFrame = Math.min(largeFromFrame, mainAt.frame());
            isTorn = mainAt.frame() - largeFromFrame > rate.frameAt(LARGE_FOR_SECONDS);
        } else {
            largeFromFrame = Long.MAX_VALUE;
            distance.after(ahead).ifPresent(seconds -> makeUp(seconds, mainAt, delays));
        }
    }

    private void makeUp(double aheadSeconds, HeardAt mainAt, Delays delays) {
        if (Math.abs(aheadSeconds) >= SMALL_SECONDS) {
            moveBy(rate.frameAt(aheadSeconds));
        }
        if (start == Start.WITH_THE_MAIN && mainAt.frame() < rate.frameAt(STARTING_SECONDS)) {
            usualLaterFrames = wantedFrames - skippedFrames + rate.frameAt(delays.apartSeconds());
        }
    }

    private void rejoin(HeardAt mainAt, LiveMix mainMix, Leg leg, Delays delays) {
        Piece last = mainMix.route().last();
        if (last.change() != leg.number()) {
            return; // a change is under way; it is taken up when it has come
        }
        long next = mainMix.nextFrame();
        long nextOutput = last.outputFrame() + next - last.songFrame();
        start = Start.AFTER_IT;
        settledFrame = mainAt.frame() + rate.frameAt(SETTLING_SECONDS);
        play(leg, next, nextOutput - mainAt.frame() - rate.frameAt(delays.apartSeconds()));
    }
}
