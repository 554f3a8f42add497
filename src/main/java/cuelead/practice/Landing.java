package cuelead.practice;

import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;

/**
 * Where a jump leaves what is heard, and where it lands, so that beat follows beat.
 *
 * @param atSeconds when it leaves, seconds of the song on the way that is heard before
 * @param toSeconds where it lands, seconds of the song
 */
record Landing(double atSeconds, double toSeconds) {
    /** A jump may leave within a beat when it is heard so soon. */
    private static final double SOON_SECONDS = 0.3;

    /** Whether the music goes on as if nothing had been ordered. */
    boolean isSameWay() {
        return atSeconds == toSeconds;
    }

    /**
     * The next beat that can still be changed becomes the beat that is jumped to. Where that one is heard late although
     * a beat comes before it, the jump leaves within that beat and lands as long before the wanted beat.
     *
     * @param heardSeconds what is heard now, on the way that is left
     * @param nextSeconds  what can be changed first
     * @param wanted       the beat to be jumped to
     */
    static Landing onBeat(BeatGrid grid, double heardSeconds, double nextSeconds, BeatPosition wanted) {
        return onBeat(grid, heardSeconds, nextSeconds, grid.secondsAt(wanted));
    }

    /** The same to a beat of other beats. */
    static Landing onBeat(BeatGrid left, double heardSeconds, double nextSeconds, double wantedSeconds) {
        double atSeconds = soonest(left, heardSeconds, nextSeconds);
        double beatSeconds = left.secondsAt(beatFrom(left, nextSeconds));
        return new Landing(atSeconds, wantedSeconds - (beatSeconds - atSeconds));
    }

    /** The music goes on, with other calls from the next beat on; where that one cannot be changed any more, at once. */
    static Landing onTheWay(BeatGrid grid, double heardSeconds, double nextSeconds) {
        double atSeconds = soonest(grid, heardSeconds, nextSeconds);
        return new Landing(atSeconds, atSeconds);
    }

    private static double soonest(BeatGrid grid, double heardSeconds, double nextSeconds) {
        double beatSeconds = grid.secondsAt(beatFrom(grid, nextSeconds));
        boolean isNextBeat = grid.secondsAt(beatFrom(grid, heardSeconds)) >= beatSeconds;
        return isNextBeat || beatSeconds - heardSeconds <= SOON_SECONDS ? beatSeconds : nextSeconds;
    }

    /** The first beat that is not before a time. */
    static BeatPosition beatFrom(BeatGrid grid, double seconds) {
        BeatPosition position = grid.positionAt(seconds);
        BeatPosition beat = BeatPosition.atBeat(position.beatIndex());
        return position.isOnBeat() ? beat : beat.plus(Beats.ONE);
    }

    /** The last beat that is not after a time. */
    static BeatPosition beatUntil(BeatGrid grid, double seconds) {
        return BeatPosition.atBeat(grid.positionAt(seconds).beatIndex());
    }
}
