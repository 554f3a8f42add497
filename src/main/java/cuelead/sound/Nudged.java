package cuelead.sound;

import java.util.Arrays;

/**
 * A sound that is moved a little earlier or later while it plays, to keep it in step with another on a device whose clock
 * runs differently. It is moved only where it is silent, by leaving out or adding silence, so that nothing is heard of
 * it; what is sounding waits for its end.
 *
 * <p>Read by one thread, moved by another. Reading is realtime-safe.
 */
public final class Nudged implements Sound {
    private static final int CHUNK_FRAMES = 1024;

    private final Sound source;
    private final float[] chunk = new float[CHUNK_FRAMES * CHANNELS];
    private boolean isSilent = true;
    private long moved;
    private volatile long wantedFrames;
    private volatile long toldMovedFrames;

    public Nudged(Sound source) {
        this.source = source;
    }

    /** Shall be so much later than the source in all; earlier when below zero. */
    public void moveTo(long laterFrames) {
        wantedFrames = laterFrames;
    }

    /** How much later than the source it is in all, of what has been read. */
    public long movedFrames() {
        return toldMovedFrames;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        int done = 0;
        boolean hasEnded = false;
        while (done < frames && !hasEnded) {
            int wanted = Math.min(CHUNK_FRAMES, frames - done);
            long later = wantedFrames - moved;
            if (later > 0 && isSilent) {
                int added = (int) Math.min(later, wanted);
                Arrays.fill(interleaved, done * CHANNELS, (done + added) * CHANNELS, 0);
                moved += added;
                done += added;
            } else {
                int got = source.read(chunk, wanted);
                hasEnded = got < wanted;
                isSilent = isSilent(got);
                int left = isSilent && later < 0 ? (int) Math.min(-later, got) : 0;
                moved -= left;
                System.arraycopy(chunk, left * CHANNELS, interleaved, done * CHANNELS, (got - left) * CHANNELS);
                done += got - left;
            }
        }
        toldMovedFrames = moved;
        return done;
    }

    private boolean isSilent(int frames) {
        for (int i = 0; i < frames * CHANNELS; i++) {
            if (chunk[i] != 0) {
                return false;
            }
        }
        return true;
    }
}
