package cuelead.output;

import cuelead.time.SampleRate;
import java.util.concurrent.TimeUnit;

/**
 * Says which frame is heard, from the frame that was handed to the device and how long the device holds it. While the
 * sound is held, nothing more is handed over, and what the device has is heard by the computer's clock. The frame
 * never goes back unless it is set back. Realtime-safe.
 */
final class HeardClock {
    private static final double NANOS_A_SECOND = TimeUnit.SECONDS.toNanos(1);

    private final SampleRate rate;
    private double lastKnownSeconds;
    private long handedFrame;
    private double latencySeconds;
    private long readNanos;
    private long heardFrame;

    /** @param usualLatencySeconds is taken until the first is known */
    HeardClock(SampleRate rate, double usualLatencySeconds) {
        this.rate = rate;
        lastKnownSeconds = usualLatencySeconds;
    }

    /** Sets it: nothing of what comes is heard yet. */
    void beginAt(long frame) {
        handedFrame = frame;
        heardFrame = frame;
        latencySeconds = lastKnownSeconds;
    }

    /**
     * A reading. A queue may come to its end while it is read and then seems to begin anew, so a frame that is less
     * than the last counts as the last.
     *
     * @param handed the frame that is handed to the device next
     * @param latencySeconds how long after now that frame will be heard; 0 when that is not known
     * @param nanos now
     */
    void read(long handed, double latencySeconds, long nanos) {
        handedFrame = Math.max(handedFrame, handed);
        if (latencySeconds > 0) {
            lastKnownSeconds = latencySeconds;
        }
        this.latencySeconds = lastKnownSeconds;
        readNanos = nanos;
    }

    long handedFrame() {
        return handedFrame;
    }

    double latencySeconds() {
        return latencySeconds;
    }

    long readNanos() {
        return readNanos;
    }

    /**
     * The frame that is heard now.
     *
     * @param lengthFrames it never goes beyond these
     */
    long heardAt(long nanos, long lengthFrames) {
        double stillHeldSeconds = Math.max(0, latencySeconds - (nanos - readNanos) / NANOS_A_SECOND);
        long heard = Math.min(handedFrame - rate.frameAt(stillHeldSeconds), lengthFrames);
        heardFrame = Math.max(heardFrame, heard);
        return heardFrame;
    }

    /** The frame that {@link #heardAt} said last. */
    long heardFrame() {
        return heardFrame;
    }
}
