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
 * <p>{@link #copy} is realtime-safe. {@link #append}, {@link #finish} and {@link #fail} belong to the loading
 * thread; {@link #await} is for a thread that may wait.
 */
public final class Pcm implements Music {
    private static final int CHUNK_FRAMES = 1 << 15;

    private final SampleRate rate;
    private final long lengthFrames;
    private final float[][] chunks;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition grown = lock.newCondition();

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

    /**
     * Waits until the frames before {@code frame} (or the song's end) can be read, or loading has ended. Never on
     * the audio thread.
     *
     * @return false when loading has ended before that
     * @throws IllegalStateException when loading has broken down before that; its cause says how
     */
    public boolean await(long frame) throws InterruptedException {
        long wanted = Math.min(frame, lengthFrames);
        lock.lock();
        try {
            while (availableFrames < wanted && !finished) {
                grown.await();
            }
            if (availableFrames < wanted && failure.isPresent()) {
                throw new IllegalStateException("loading broke down", failure.get());
            }
            return availableFrames >= wanted;
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
