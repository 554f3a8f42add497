package cuelead.output;

import cuelead.time.SampleRate;
import java.util.concurrent.TimeUnit;

/**
 * Tells from how far the sound has been handed to the device, looked at again and again, whether the device was fed
 * in time. Two things are seen here that OpenAL does not say: that the device had nothing left to play, and that
 * after a standstill of the computer, the program or the sound server it raced through more sound than time had
 * passed, which nobody heard. Realtime-safe.
 */
final class DeviceWatch {
    /** Devices take sound by the buffer: so much more than the time that passed is still usual. */
    private static final double USUAL_BURST_SECONDS = 0.1;
    /** A thread that was not run for so long did not wait for the processor: all stood still. */
    private static final double STANDSTILL_SECONDS = 1;

    /** What devices say of themselves in their first moments is not to be trusted. */
    private static final long SETTLING_NANOS = TimeUnit.SECONDS.toNanos(5);

    /** What is seen sooner after the last trouble belongs to it. */
    private static final long SAME_GAP_NANOS = TimeUnit.MILLISECONDS.toNanos(500);

    private static final double NANOS_A_SECOND = TimeUnit.SECONDS.toNanos(1);

    /** What a look showed. */
    enum Seen {
        FED,
        /** The device has nothing to play. */
        DRY,
        /** What was handed over since the last look was not heard. */
        RACED
    }

    private final SampleRate rate;
    private boolean isFresh;
    private boolean isLatencyKnown;
    private long settledNanos;
    private long troubleNanos;
    private int gaps;
    private long handedFrame;
    private long lookNanos;
    private long dryNanos;

    DeviceWatch(SampleRate rate) {
        this.rate = rate;
    }

    /** Forgets: the sound is begun, held or moved, and the next look is the first. */
    void begin() {
        isFresh = false;
    }

    /** A device was opened: that it has nothing to play is not said in its first moments. */
    void opened(long nanos) {
        begin();
        isLatencyKnown = false;
        settledNanos = nanos + SETTLING_NANOS;
        troubleNanos = nanos - SAME_GAP_NANOS - 1;
    }

    /** How many gaps there were; a gap in which several things are seen is one. */
    int gaps() {
        return gaps;
    }

    /** The frame that had been handed over at the last look. */
    long handedFrame() {
        return handedFrame;
    }

    /**
     * Looks.
     *
     * @param handed         the frame that is handed to the device next
     * @param latencySeconds when that frame would be heard, from now; 0 when the device does not know yet, and when
     *     it has nothing to play
     * @param nanos          now
     */
    Seen look(long handed, double latencySeconds, long nanos) {
        Seen seen = isFresh ? compare(handed, latencySeconds, nanos) : Seen.FED;
        if (latencySeconds > 0 && (!isFresh || handed != handedFrame)) {
            isLatencyKnown = true;
            dryNanos = nanos + (long) (latencySeconds * NANOS_A_SECOND);
        }
        if (seen != Seen.FED) {
            gaps += nanos - troubleNanos > SAME_GAP_NANOS ? 1 : 0;
            troubleNanos = nanos;
        }
        isFresh = true;
        lookNanos = nanos;
        if (seen != Seen.RACED) {
            handedFrame = handed;
        }
        return seen;
    }

    private Seen compare(long handed, double latencySeconds, long nanos) {
        double passedSeconds = (nanos - lookNanos) / NANOS_A_SECOND;
        double takenSeconds = rate.secondsAt(handed - handedFrame);
        if (takenSeconds - passedSeconds > USUAL_BURST_SECONDS
                || (passedSeconds > STANDSTILL_SECONDS && handed != handedFrame)) {
            return Seen.RACED;
        }
        boolean isSettled = isLatencyKnown && nanos - settledNanos > 0;
        boolean hasNothing = latencySeconds <= 0 || (handed == handedFrame && nanos - dryNanos > 0);
        return isSettled && hasNothing ? Seen.DRY : Seen.FED;
    }
}
