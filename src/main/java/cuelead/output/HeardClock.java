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
    private final HeldTime held;
    private long handedFrame;
    private double latencySeconds;
    private long readNanos;
    private long heardFrame;

    /** @param held what is known of the device */
    HeardClock(SampleRate rate, HeldTime held) {
        this.rate = rate;
        this.held = held;
    }

    /** Sets it: nothing of what comes is heard yet. */
    void beginAt(long frame) {
        handedFrame = frame;
        heardFrame = frame;
        latencySeconds = held.usualSeconds();
    }

    /**
     * A reading. A queue may come to its end while it is read and then seems to begin anew, so a frame that is less
     * than the last counts as the last.
     *
     * @param handed the frame that is handed to the device next
     * @param saidLatencySeconds how long after now that frame will be heard, as the device has it; 0 when it does not
     *     know
     * @param nanos now
     */
    void read(long handed, double saidLatencySeconds, long nanos) {
        handedFrame = Math.max(handedFrame, handed);
        latencySeconds = held.after(saidLatencySeconds, nanos);
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
