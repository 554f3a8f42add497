package cuelead.sound;

/**
 * One stream without end, silent but for what is put into it while it plays. What lies between two sounds in it is then
 * known to the frame, however deep the device's queue is. {@link #begin} may be called by one thread while another reads.
 */
public final class Staged implements Sound {
    private static final long NOT_YET = -1;

    /** A sound in the stream. */
    public static final class Stage {
        private final Sound sound;
        private volatile long firstFrame = NOT_YET;
        private volatile long endFrame = Long.MAX_VALUE;

        private Stage(Sound sound) {
            this.sound = sound;
        }

        /** Whether the stream has come to it. */
        public boolean hasBegun() {
            return firstFrame != NOT_YET;
        }

        /** The frame of the stream with which it began; only when it has begun. */
        public long firstFrame() {
            return firstFrame;
        }

        /** One past its last frame in the stream; unreachable as long as it goes on. */
        public long endFrame() {
            return endFrame;
        }
    }

    private final Stage silence = new Stage((interleaved, frames) -> 0);
    private volatile Stage wanted = silence;
    private Stage now = silence;
    private long frame;

    /** Lets a sound begin with the next frames that are read, in place of the one before. */
    public Stage begin(Sound sound) {
        Stage next = new Stage(sound);
        wanted = next;
        return next;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        Stage next = wanted;
        if (next != now) {
            now.endFrame = Math.min(now.endFrame, frame);
            now = next;
            now.firstFrame = frame;
        }
        int got = now.endFrame == Long.MAX_VALUE ? now.sound.read(interleaved, frames) : 0;
        if (got < frames && now.endFrame == Long.MAX_VALUE) {
            now.endFrame = frame + got;
        }
        for (int i = got * CHANNELS; i < frames * CHANNELS; i++) {
            interleaved[i] = 0;
        }
        frame += frames;
        return frames;
    }
}
