package cuelead.sound;

/**
 * Something that plays one sound at a time and says what is heard. Orders may come from one thread at a time; all
 * other methods are thread-safe.
 */
public interface Speakers extends AutoCloseable {
    /**
     * Plays a sound from its next frame on, in place of what is playing; at once, or after {@link #resume}.
     *
     * @param startFrame what that frame is called: {@link #heardFrame} counts from there
     */
    void play(Sound sound, long startFrame);

    /** Holds the sound where it is; what the device has is still heard, less than 0.1 s with usual devices. */
    void pause();

    /** Goes on after {@link #pause}. */
    void resume();

    /** Silence; what was playing cannot go on. */
    void stop();

    /** The frame that leaves the speakers now, at most a few milliseconds old. */
    long heardFrame();

    /** The latest reading of {@link #heardFrame} with its time, for comparing clocks. */
    default HeardAt heardAt() {
        return new HeardAt(heardFrame(), System.nanoTime());
    }

    /** Whether the last frame of the sound has been heard, or the sound was stopped. */
    boolean hasEnded();

    /** Waits until {@link #hasEnded}, or for so long. Not for a thread that must not wait. */
    boolean awaitEnd(long timeoutMillis) throws InterruptedException;

    /** How often the sound broke off because it was not fed in time, as far as that can be known. */
    int dropOuts();

    /** Whether the device is gone. When one is there again the sound goes on with what was not heard. */
    boolean isDeviceLost();

    /** Silence, and the device is given back. */
    @Override
    void close();
}
