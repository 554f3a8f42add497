package cuelead.song;

import cuelead.time.SampleRate;
import java.io.Closeable;
import java.io.IOException;

/**
 * A sound file that is being decoded from its front. Belongs to one thread at a time. Where sound is missing
 * or damaged it gives silence, so that the timeline never shifts.
 */
interface Decoder extends Closeable {
    SampleRate rate();

    /** The exact length of what {@link #read} gives in all. */
    long lengthFrames();

    /**
     * Overwrites the first {@code frames} frames of a buffer.
     *
     * @param stereo interleaved, full scale = 1; at least {@code 2 * frames} long
     * @return how many frames were written; fewer than wanted only at the end, then 0
     */
    int read(float[] stereo, int frames) throws IOException;
}
