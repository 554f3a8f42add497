package cuelead.song;

import cuelead.time.SampleRate;
import java.nio.ByteOrder;

/**
 * Where and how the samples of an uncompressed file lie.
 *
 * @param dataOffset the file's byte at which the samples begin
 * @param dataBytes  how many bytes of samples the header promises; {@link #TO_THE_END} when it does not say
 */
record RawLayout(SampleRate rate, int channels, SampleFormat format, ByteOrder order, long dataOffset, long dataBytes) {
    static final long TO_THE_END = Long.MAX_VALUE;

    int frameBytes() {
        return channels * format.byteCount();
    }
}
