package cuelead.output;

import cuelead.sound.HeardAt;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.LongSupplier;

/**
 * Speakers that nobody hears: they go through a sound as fast as it would be heard, by the computer's clock, so that a
 * dance can be followed where there is no sound device. Frames are "heard" without delay; up to a block of them is pulled
 * ahead, as with a device.
 */
public final class SilentSpeakers implements Speakers {
    private static final double BLOCK_SECONDS = 0.02;
    private static final long TURN_NANOS = TimeUnit.MILLISECONDS.toNanos(5);

    private final SampleRate rate;
    private final LongSupplier nanos;
    private final int blockFrames;
    private final float[] block;
    private Sound sound = (interleaved, frames) -> 0;
    private long startFrame;
    private long pulledFrames;
    private boolean isPulledOut = true;
    private boolean isPaused;
    /** How much of the sound had gone by when it last began to go on, and when that was. */
    private long goneFrames;

    private long goingSinceNanos;
    private volatile boolean isClosed;

    /** @param nanos the time, as {@link System#nanoTime} */
    SilentSpeakers(SampleRate rate, LongSupplier nanos) {
        this.rate = rate;
        this.nanos = nanos;
        blockFrames = rate.framesIn(BLOCK_SECONDS);
        block = new float[blockFrames * Sound.CHANNELS];
    }

    /** Speakers that go on by a thread of their own until they are closed. */
    public static SilentSpeakers open(SampleRate rate) {
        SilentSpeakers speakers = new SilentSpeakers(rate, System::nanoTime);
        Thread thread = new Thread(speakers::run, "cuelead-silence");
        thread.setDaemon(true);
        thread.start();
        return speakers;
    }

    private void run() {
        while (!isClosed) {
            pull();
            LockSupport.parkNanos(TURN_NANOS);
        }
    }

    /** Pulls what is due. */
    synchronized void pull() {
        long dueFrames = played(nanos.getAsLong());
        while (!isPulledOut && pulledFrames < dueFrames + blockFrames) {
            int got = sound.read(block, blockFrames);
            pulledFrames += got;
            isPulledOut = got < blockFrames;
        }
    }

    private long played(long now) {
        double goingSeconds = isPaused ? 0 : (double) (now - goingSinceNanos) / TimeUnit.SECONDS.toNanos(1);
        long frames = goneFrames + rate.frameAt(goingSeconds);
        return isPulledOut ? Math.min(frames, pulledFrames) : frames;
    }

    @Override
    public synchronized void play(Sound next, long startFrame) {
        sound = next;
        this.startFrame = startFrame;
        pulledFrames = 0;
        isPulledOut = false;
        goneFrames = 0;
        goingSinceNanos = nanos.getAsLong();
    }

    @Override
    public synchronized void pause() {
        goneFrames = played(nanos.getAsLong());
        isPaused = true;
    }

    @Override
    public synchronized void resume() {
        goneFrames = played(nanos.getAsLong());
        goingSinceNanos = nanos.getAsLong();
        isPaused = false;
    }

    @Override
    public synchronized void stop() {
        goneFrames = played(nanos.getAsLong());
        pulledFrames = goneFrames;
        isPulledOut = true;
    }

    @Override
    public long heardFrame() {
        return heardAt().frame();
    }

    /** Never more than was pulled: a thread that comes late lets the sound wait. */
    @Override
    public synchronized HeardAt heardAt() {
        long now = nanos.getAsLong();
        return new HeardAt(startFrame + Math.min(played(now), pulledFrames), now);
    }

    @Override
    public synchronized boolean hasEnded() {
        return isPulledOut && played(nanos.getAsLong()) >= pulledFrames;
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) throws InterruptedException {
        return EndWait.until(this::hasEnded, timeoutMillis);
    }

    @Override
    public int dropOuts() {
        return 0;
    }

    @Override
    public boolean isDeviceLost() {
        return false;
    }

    @Override
    public void close() {
        isClosed = true;
    }
}
