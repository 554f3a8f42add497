package cuelead.sound;

/**
 * A stereo stream that is pulled. Reading is realtime-safe in every implementation: no allocation, lock, file
 * or log. Equal streams give equal samples whatever the block size.
 */
public interface Sound {
    int CHANNELS = 2;

    /**
     * Overwrites the first {@code frames} frames of a buffer with the next ones of the stream.
     *
     * @param interleaved left, right, left ...; at least {@code 2 * frames} long; full scale = 1
     * @param frames      how many frames are wanted
     * @return how many were written: fewer than wanted only at the end, then 0
     */
    int read(float[] interleaved, int frames);
}
