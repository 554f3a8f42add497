package cuelead.sound;

import cuelead.time.SampleRate;

/** The music of a plan, on the plan's own time line: a song as it is, or slower or faster. */
public interface Music {
    SampleRate rate();

    /** Length of all of it, also while the song is still loading. */
    long lengthFrames();

    /** The frame of the song that is heard at a frame of this. */
    long songFrameAt(long frame);

    /**
     * Reads frames from any place, best one after the other; outside the song there is silence. For one thread; the
     * making allocates, reading is realtime-safe.
     */
    MusicReader reader();
}
