package cuelead.output;

import java.io.IOException;

/** Writes the samples of one file as they come, interleaved; full scale = 1. */
interface TrackWriter {
    void begin() throws IOException;

    /**
     * Writes the next samples.
     *
     * @param from  first of them in the array
     * @param count how many, of all channels together
     */
    void write(float[] samples, int from, int count) throws IOException, InterruptedException;

    void end() throws IOException;
}
