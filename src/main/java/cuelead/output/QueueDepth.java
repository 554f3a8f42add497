package cuelead.output;

import cuelead.time.SampleRate;

/**
 * How far ahead of the device the sound is fed: a few short buffers. Deeper is safer against a busy computer;
 * shallower is sooner heard when what is played changes.
 *
 * @param buffers       at least 2
 * @param bufferSeconds at least 0.01
 */
record QueueDepth(int buffers, double bufferSeconds) {
    /** A change reaches the device at most 120 ms later; at real-time priority no gap in 10 minutes on two busy cores. */
    static final QueueDepth SHIPPED = new QueueDepth(6, 0.020);

    QueueDepth {
        if (buffers < 2 || !(bufferSeconds >= 0.01)) {
            throw new IllegalArgumentException("queue too shallow: " + buffers + " buffers of " + bufferSeconds + " s");
        }
    }

    int bufferFrames(SampleRate rate) {
        return rate.framesIn(bufferSeconds);
    }
}
