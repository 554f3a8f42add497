package cuelead.output;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;

/**
 * The queue of a source, kept full from a {@link Feed}. Frames are counted from the track's first. Belongs to one
 * thread; realtime-safe but for making and closing.
 */
final class FedQueue implements AutoCloseable {
    /** More than a queue and the slowest wireless device hold. */
    private static final double MEMORY_SECONDS = 2;

    private final SampleRate rate;
    private final int bufferFrames;
    private final float[] block;
    private final Feed feed;
    private final FadeIn fadeIn;
    private final AlSource source;
    /** The frame at the front of the queue. */
    private long frontFrame;

    FedQueue(AlSource source, SampleRate rate, QueueDepth depth) {
        this.source = source;
        this.rate = rate;
        bufferFrames = depth.bufferFrames(rate);
        block = new float[bufferFrames * Sound.CHANNELS];
        feed = new Feed(bufferFrames, rate.framesIn(MEMORY_SECONDS));
        fadeIn = new FadeIn(rate);
    }

    /** Is full of another track, from its beginning; the source stands still. */
    void begin(Track track) {
        feed.begin(track);
        beginAt(0);
    }

    /** Is full of the same track, from an earlier frame or one that is near to it; the source stands still. */
    long beginAt(long frame) {
        source.clear();
        feed.rewindTo(frame);
        frontFrame = feed.nextFrame();
        feed.next(block);
        fadeIn.shape(block);
        source.queue(block);
        fill();
        return frontFrame;
    }

    /** Lets go of what has been played. */
    void unqueuePlayed() {
        frontFrame += (long) source.unqueuePlayed() * bufferFrames;
    }

    void fill() {
        while (source.freeBuffers() > 0) {
            feed.next(block);
            source.queue(block);
        }
    }

    /** The frame that was handed to the device next when the source's clock was read. */
    long handedFrame() {
        return frontFrame + rate.frameAt(source.offsetSeconds());
    }

    /** How long the track is, once its end has been pulled; before that more than can be played. */
    long lengthFrames() {
        return feed.lengthFrames();
    }

    @Override
    public void close() {
        source.close();
    }
}
