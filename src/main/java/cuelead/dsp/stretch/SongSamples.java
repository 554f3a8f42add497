package cuelead.dsp.stretch;

/** A song's samples at any place. Realtime-safe. */
@FunctionalInterface
public interface SongSamples {
    /**
     * Overwrites the front of a buffer with frames of the song, or silence where there are none.
     *
     * @param fromFrame   first frame wanted; may lie outside the song
     * @param interleaved left, right, left ...; at least {@code 2 * frames} long
     */
    void copy(long fromFrame, float[] interleaved, int frames);
}
