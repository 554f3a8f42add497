package cuelead.dsp.stretch;

import java.util.Arrays;

/**
 * Frames of a song at which something is struck, in rising order, found while the song is loaded. One thread adds, any
 * may read; reading is realtime-safe.
 */
public final class Onsets {
    /** What is told together: an array and how much of it is filled. */
    @SuppressWarnings("ArrayRecordComponent") // compared by nobody
    private record Found(long[] frames, int count, long knownUntilFrame) {}

    private volatile Found found = new Found(new long[256], 0, 0);

    /** No onset at all, all of the song being known. */
    public static Onsets none() {
        Onsets onsets = new Onsets();
        onsets.known(Long.MAX_VALUE);
        return onsets;
    }

    /** @param frame behind the last that was added */
    void add(long frame) {
        Found now = found;
        if (now.count > 0 && now.frames[now.count - 1] >= frame) {
            throw new IllegalArgumentException("onset at frame " + frame + " behind " + now.frames[now.count - 1]);
        }
        long[] frames = now.count == now.frames.length ? Arrays.copyOf(now.frames, 2 * now.count) : now.frames;
        frames[now.count] = frame;
        found = new Found(frames, now.count + 1, now.knownUntilFrame);
    }

    /** Says that all onsets before a frame have been added. */
    void known(long untilFrame) {
        Found now = found;
        found = new Found(now.frames, now.count, untilFrame);
    }

    /** All onsets before this frame are known. */
    public long knownUntilFrame() {
        return found.knownUntilFrame;
    }

    public int count() {
        return found.count;
    }

    /** The frame of an onset, 0 being the first. */
    public long frame(int index) {
        return found.frames[index];
    }

    /** How many of them lie before a frame. */
    public int countBefore(long frame) {
        Found now = found;
        int low = 0;
        int high = now.count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (now.frames[middle] < frame) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
