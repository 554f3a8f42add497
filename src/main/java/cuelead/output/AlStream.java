package cuelead.output;

import cuelead.time.SampleRate;
import java.util.function.LongSupplier;

/**
 * Feeds a {@link Track} to a device through a short queue and says what of it is heard. What a device swallows is
 * played again when it is back. After the end of the track silence follows until its last frame has been heard.
 *
 * <p>Belongs to one thread, whose OpenAL context it uses. Realtime-safe but for making and closing.
 */
final class AlStream implements AutoCloseable {
    private final AlDevice device;
    private final LongSupplier nanoClock;
    private final AlSource source;
    private final FedQueue queue;
    private final SilentSource silence;
    private final HeldTime held;
    private final HeardClock heard;
    private final DeviceWatch watch;

    private Track track = new Track((interleaved, frames) -> 0, 0);
    private boolean isRunning;
    private boolean isPaused;
    private int dropOuts;

    /**
     * @param device    is in use on this thread
     * @param nanoClock as {@link System#nanoTime}
     */
    AlStream(AlDevice device, SampleRate rate, QueueDepth depth, LongSupplier nanoClock) {
        this.device = device;
        this.nanoClock = nanoClock;
        source = new AlSource(rate, depth.buffers(), depth.bufferFrames(rate));
        queue = new FedQueue(source, rate, depth);
        silence = new SilentSource(rate);
        held = new HeldTime(device.usualLatencySeconds(), nanoClock.getAsLong());
        heard = new HeardClock(rate, held);
        watch = new DeviceWatch(rate);
        watch.opened(nanoClock.getAsLong());
    }

    /** Stops what sounds and begins another track, at once or after {@link #resume}. */
    void begin(Track next) {
        track = next;
        isRunning = true;
        queue.begin(next);
        playFrom(0);
    }

    /** Silence at once; the rest of the track is forgotten. */
    void stop() {
        isRunning = false;
        source.clear();
        track.end();
    }

    /** Holds the sound; what the device has is still heard. */
    void pause() {
        hold();
        isPaused = true;
    }

    /** Goes on after {@link #pause}, where it was held. */
    void resume() {
        if (isRunning && isPaused) {
            watch.begin();
            queue.unqueuePlayed();
            queue.fill();
            source.play();
        }
        isPaused = false;
    }

    /** Stops the sound until {@link #goOnAfterHold}; what the device has is still heard, for {@link #latencySeconds}. */
    void hold() {
        if (isRunning && !isPaused) {
            source.pause();
            readClock();
        }
    }

    void goOnAfterHold() {
        useNewDevice();
        if (isRunning) {
            beginAt(heard.handedFrame());
        }
    }

    /** Goes on after the device was lost and is back, with what was swallowed. */
    void goOnAfterLoss() {
        useNewDevice();
        if (isRunning) {
            beginAt(heard.heardFrame());
        }
    }

    private void useNewDevice() {
        silence.play();
        held.opened(nanoClock.getAsLong());
        watch.opened(nanoClock.getAsLong());
    }

    private void beginAt(long frame) {
        playFrom(queue.beginAt(frame));
    }

    private void playFrom(long frame) {
        heard.beginAt(frame);
        watch.begin();
        if (!isPaused) {
            source.play();
        }
    }

    /**
     * Feeds the queue and says what is heard; to be called several times a buffer.
     *
     * @return false when the device is gone; then nothing was done
     */
    boolean pump() {
        boolean isThere = (isRunning && !isPaused) ? feed() : isThere();
        if (isThere && isRunning) {
            tellWhatIsHeard();
        }
        return isThere;
    }

    private boolean feed() {
        boolean isEmpty = source.isStopped();
        queue.unqueuePlayed();
        if (!readClock()) {
            return false;
        }
        DeviceWatch.Seen seen = watch.look(heard.handedFrame(), source.latencySeconds(), heard.readNanos());
        if (seen == DeviceWatch.Seen.RACED) {
            held.stoodStill(heard.readNanos());
            beginAt(watch.handedFrame());
            return true;
        }
        queue.fill();
        if (isEmpty) {
            dropOuts++;
            source.play();
        }
        return true;
    }

    /** The device itself is asked only in doubt: its answer waits for whoever looks which devices there are. */
    private boolean isThere() {
        return silence.isPlaying() || device.isConnected();
    }

    private boolean readClock() {
        source.readClock();
        if (source.isStopped() ? !device.isConnected() : !isThere()) {
            return false; // then the clock shows nothing, and a stopped queue was not played to its end
        }
        heard.read(queue.handedFrame(), source.latencySeconds(), nanoClock.getAsLong());
        return true;
    }

    private void tellWhatIsHeard() {
        long nowNanos = nanoClock.getAsLong();
        track.heard(heard.heardAt(nowNanos, queue.lengthFrames()), nowNanos);
        if (heard.heardFrame() >= queue.lengthFrames()) {
            stop();
        }
    }

    /** How long what is handed to the device now will take until it is heard. */
    double latencySeconds() {
        return heard.latencySeconds();
    }

    /** How often the sound was not fed in time since the beginning, as far as that can be known. */
    int dropOuts() {
        return dropOuts + watch.gaps();
    }

    @Override
    public void close() {
        queue.close();
        silence.close();
    }
}
