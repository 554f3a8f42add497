package cuelead.output;

import cuelead.sound.HeardAt;
import cuelead.sound.Sound;
import java.util.concurrent.atomic.AtomicInteger;

/** A sound on its way to the speakers. Its progress is written by the audio thread and may be read by any. */
final class Track {
    private final Sound sound;
    private final long startFrame;
    private volatile long heardFrame;
    private volatile long heardNanos;
    private volatile boolean ended;
    /** Odd while the two values of a reading are written. */
    private final AtomicInteger writes = new AtomicInteger();

    /** @param startFrame what the first frame of the sound is called: progress is counted from there */
    Track(Sound sound, long startFrame) {
        this.sound = sound;
        this.startFrame = startFrame;
        heardFrame = startFrame;
        heardNanos = System.nanoTime();
    }

    /** Realtime-safe, as the sound is. */
    int read(float[] interleaved, int frames) {
        return sound.read(interleaved, frames);
    }

    /** Realtime-safe; from one thread. */
    void heard(long framesOfSound, long nanos) {
        writes.incrementAndGet();
        heardFrame = startFrame + framesOfSound;
        heardNanos = nanos;
        writes.incrementAndGet();
    }

    void end() {
        ended = true;
    }

    long heardFrame() {
        return heardFrame;
    }

    /** The last reading: frame and time belong together. */
    HeardAt heardAt() {
        while (true) {
            int before = writes.get();
            HeardAt reading = new HeardAt(heardFrame, heardNanos);
            if (before % 2 == 0 && writes.get() == before) {
                return reading;
            }
            Thread.onSpinWait();
        }
    }

    boolean hasEnded() {
        return ended;
    }
}
