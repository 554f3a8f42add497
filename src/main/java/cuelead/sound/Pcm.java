package cuelead.sound;

import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The decoded samples of a song, stereo at one rate, filled by one loading thread from the front while others
 * read. Held in fixed chunks, so that filling never copies and memory is one copy of the song.
 *
 * <p>{@link #copy} is realtime-safe. {@link #append}, {@link #awaitWanted}, {@link #finish} and {@link #fail} belong to
 * the loading thread; {@link #await} is for a thread that may wait.
 */
public final class Pcm implements Music {
    private static final int CHUNK_FRAMES = 1 << 15;

    private final SampleRate rate;
    private final long lengthFrames;
    private final float[][] chunks;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition grown = lock.newCondition();
    private final Condition wanted = lock.newCondition();
    /** Those before it are asked for; guarded by the lock. */
    private long wantedFrames;

    private volatile long availableFrames;
    private volatile boolean finished;
    private volatile Optional<Throwable> failure = Optional.empty();

    /** @param lengthFrames the length of the whole song, known before it is decoded */
    public Pcm(SampleRate rate, long lengthFrames) {
        if (lengthFrames < 0) {
            throw new IllegalArgumentException("length below 0 frames: " + lengthFrames);
        }
        this.rate = rate;
        this.lengthFrames = lengthFrames;
        this.chunks = new float[Math.toIntExact((lengthFrames + CHUNK_FRAMES - 1) / CHUNK_FRAMES)][];
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    /** Length of the whole song, also while it is still being filled. */
    @Override
    public long lengthFrames() {
        return lengthFrames;
    }

    @Override
    public long songFrameAt(long frame) {
        return frame;
    }

    @Override
    public MusicReader reader() {
        return this::copy;
    }

    public double lengthSeconds() {
        return rate.secondsAt(lengthFrames);
    }

    /** How many frames from the front are there to be read. */
    public long availableFrames() {
        return availableFrames;
    }

    public boolean isFinished() {
        return finished;
    }

    /**
     * Adds the next frames; those beyond the length are dropped.
     *
     * @param interleaved stereo
     */
    public void append(float[] interleaved, int frames) {
        long at = availableFrames;
        int wanted = (int) Math.min(frames, lengthFrames - at);
        int done = 0;
        while (done < wanted) {
            int chunk = (int) ((at + done) / CHUNK_FRAMES);
            int inChunk = (int) ((at + done) % CHUNK_FRAMES);
            int run = Math.min(wanted - done, CHUNK_FRAMES - inChunk);
            if (chunks[chunk] == null) {
                chunks[chunk] = new float[CHUNK_FRAMES * Sound.CHANNELS];
            }
            System.arraycopy(
                    interleaved, done * Sound.CHANNELS, chunks[chunk], inChunk * Sound.CHANNELS, run * Sound.CHANNELS);
            done += run;
        }
        publish(at + wanted, false);
    }

    /** Says that nothing more comes; what is missing to the stated length reads as silence. */
    public void finish() {
        publish(availableFrames, true);
    }

    /** Says that loading broke down; those who wait are told. What was loaded before can still be read. */
    public void fail(Throwable cause) {
        failure = Optional.of(cause);
        publish(availableFrames, true);
    }

    private void publish(long available, boolean isLast) {
        lock.lock();
        try {
            availableFrames = available;
            finished = finished || isLast;
            grown.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /** Asks for the frames before {@code frame}, without waiting for them. Not on the audio thread. */
    public void want(long frame) {
        lock.lock();
        try {
            wantedFrames = Math.max(wantedFrames, frame);
            wanted.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * Waits, on the loading thread, until it can go on: what is there reaches less than so far beyond what is asked for.
     */
    public void awaitWanted(long aheadFrames) {
        lock.lock();
        try {
            while (availableFrames >= wantedFrames + aheadFrames) {
                wanted.awaitUninterruptibly();
            }
        } finally {
            lock.unlock();
        }
    }

    /**
     * Asks for the frames before {@code frame} (or the song's end) and waits until they can be read, or loading
     * has ended. Never on the audio thread.
     *
     * @return false when loading has ended before that
     * @throws IllegalStateException when loading has broken down before that; its cause says how
     */
    public boolean await(long frame) throws InterruptedException {
        long needed = Math.min(frame, lengthFrames);
        lock.lock();
        try {
            want(needed);
            while (availableFrames < needed && !finished) {
                grown.await();
            }
            if (availableFrames < needed && failure.isPresent()) {
                throw new IllegalStateException("loading broke down", failure.get());
            }
            return availableFrames >= needed;
        } finally {
            lock.unlock();
        }
    }

    /**
     * Copies frames from any place; outside the song, and where it is not yet loaded, there is silence.
     * Realtime-safe.
     */
    public void copy(long fromFrame, float[] interleaved, int frames) {
        long available = availableFrames;
        int done = 0;
        while (done < frames) {
            long at = fromFrame + done;
            int run;
            if (at < 0 || at >= available) {
                run = (int) Math.min(frames - done, at < 0 ? -at : frames - done);
                Arrays.fill(interleaved, done * Sound.CHANNELS, (done + run) * Sound.CHANNELS, 0f);
            } else {
                int inChunk = (int) (at % CHUNK_FRAMES);
                run = (int) Math.min(Math.min(frames - done, CHUNK_FRAMES - inChunk), available - at);
                System.arraycopy(
                        chunks[(int) (at / CHUNK_FRAMES)],
                        inChunk * Sound.CHANNELS,
                        interleaved,
                        done * Sound.CHANNELS,
                        run * Sound.CHANNELS);
            }
            done += run;
        }
    }
}
