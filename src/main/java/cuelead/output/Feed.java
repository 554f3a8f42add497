package cuelead.output;

import cuelead.sound.Sound;
import java.util.Arrays;

/**
 * Pulls a {@link Track} and remembers the latest of it, so that what a lost device swallowed can be played again:
 * the sound itself cannot go back. Frames are counted from the track's first. Belongs to one thread; realtime-safe
 * but for making it.
 */
final class Feed {
    private static final long UNKNOWN = Long.MAX_VALUE;

    private final int memoryFrames;
    private final float[] memory;
    private final float[] fresh;
    private Track track = new Track((interleaved, frames) -> 0, 0);
    private long pulledFrames;
    private long nextFrame;
    private long lengthFrames = UNKNOWN;

    /**
     * @param blockFrames  how many frames are asked for at a time
     * @param memoryFrames how many frames back it is possible to go, at least one block
     */
    Feed(int blockFrames, int memoryFrames) {
        this.memoryFrames = memoryFrames;
        memory = new float[memoryFrames * Sound.CHANNELS];
        fresh = new float[blockFrames * Sound.CHANNELS];
    }

    void begin(Track next) {
        track = next;
        pulledFrames = 0;
        nextFrame = 0;
        lengthFrames = UNKNOWN;
    }

    /** Goes back to a frame that was given before, or as near to it as is remembered. */
    void rewindTo(long frame) {
        nextFrame = Math.max(Math.max(0, pulledFrames - memoryFrames), Math.min(frame, nextFrame));
    }

    /** The frame that is given next. */
    long nextFrame() {
        return nextFrame;
    }

    /** How long the track is, once its end has been pulled; before that more than can be played. */
    long lengthFrames() {
        return lengthFrames;
    }

    /** Fills a whole block; with silence after the track's end. */
    void next(float[] block) {
        int frames = block.length / Sound.CHANNELS;
        int missing = (int) Math.max(0, nextFrame + frames - pulledFrames);
        if (missing > 0) {
            pull(missing);
        }
        recall(block, frames);
        nextFrame += frames;
    }

    private void pull(int frames) {
        int got = lengthFrames == UNKNOWN ? track.read(fresh, frames) : 0;
        if (got < frames) {
            Arrays.fill(fresh, got * Sound.CHANNELS, frames * Sound.CHANNELS, 0);
            lengthFrames = Math.min(lengthFrames, pulledFrames + got);
        }
        int at = (int) (pulledFrames % memoryFrames);
        int run = Math.min(frames, memoryFrames - at);
        System.arraycopy(fresh, 0, memory, at * Sound.CHANNELS, run * Sound.CHANNELS);
        System.arraycopy(fresh, run * Sound.CHANNELS, memory, 0, (frames - run) * Sound.CHANNELS);
        pulledFrames += frames;
    }

    private void recall(float[] block, int frames) {
        int at = (int) (nextFrame % memoryFrames);
        int run = Math.min(frames, memoryFrames - at);
        System.arraycopy(memory, at * Sound.CHANNELS, block, 0, run * Sound.CHANNELS);
        System.arraycopy(memory, 0, block, run * Sound.CHANNELS, (frames - run) * Sound.CHANNELS);
    }
}
