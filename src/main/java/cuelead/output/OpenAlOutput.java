package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.HeardAt;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;

/**
 * A sound device. One thread, {@code cuelead-audio}, pulls a {@link Sound} and feeds the device; it never waits for
 * another. Orders come to it through a queue without locks; what is heard comes back as plain volatile values.
 * Several may be open at once.
 *
 * <p>Orders may come from one thread at a time; all other methods are thread-safe.
 */
public final class OpenAlOutput implements Speakers {
    private final AudioThread thread;
    private volatile Track track = new Track((interleaved, frames) -> 0, 0);

    private OpenAlOutput(AudioThread thread) {
        this.thread = thread;
    }

    /**
     * Opens the default device, which plays silence until something is played. When another becomes the default, the
     * sound moves there.
     *
     * @throws Refused when there is none
     */
    public static OpenAlOutput open(SampleRate rate) throws Refused {
        return new OpenAlOutput(AudioThread.start(AlDevice::openDefault, rate));
    }

    /**
     * Opens the device of a name, see {@link DeviceName#all}. When it is lost, the sound waits for it.
     *
     * @throws Refused when it is not there, naming those that are
     */
    public static OpenAlOutput open(SampleRate rate, DeviceName name) throws Refused {
        return new OpenAlOutput(AudioThread.start(wanted -> AlDevice.openNamed(wanted, name), rate));
    }

    @Override
    public void play(Sound sound, long startFrame) {
        Track next = new Track(sound, startFrame);
        track = next;
        thread.give(new Order.Begin(next));
    }

    @Override
    public void pause() {
        thread.give(new Order.Pause());
    }

    @Override
    public void resume() {
        thread.give(new Order.Resume());
    }

    @Override
    public void stop() {
        thread.give(new Order.Stop());
    }

    @Override
    public long heardFrame() {
        return track.heardFrame();
    }

    @Override
    public HeardAt heardAt() {
        return track.heardAt();
    }

    @Override
    public boolean hasEnded() {
        thread.checkAlive();
        return track.hasEnded();
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) throws InterruptedException {
        return EndWait.until(this::hasEnded, timeoutMillis);
    }

    @Override
    public int dropOuts() {
        return thread.dropOuts();
    }

    @Override
    public boolean isDeviceLost() {
        return thread.isDeviceLost();
    }

    @Override
    public void close() {
        thread.end();
    }
}
