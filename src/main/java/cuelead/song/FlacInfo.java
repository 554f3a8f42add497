package cuelead.song;

import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * What the first metadata block of a FLAC file says of its sound (RFC 9639, section 8.2).
 *
 * @param blockFrames    frames of every block of a file of fixed blocks, the last excepted; the smallest of others
 * @param mostBlockFrames frames of the largest block
 * @param mostFrameBytes bytes of the largest coded block; 0 = not told
 * @param rateHz         frames a second
 * @param channels       1 to 8
 * @param bits           of a sample, 4 to 32
 * @param lengthFrames   of the whole sound; 0 = not told
 */
record FlacInfo(
        int blockFrames,
        int mostBlockFrames,
        int mostFrameBytes,
        int rateHz,
        int channels,
        int bits,
        long lengthFrames) {
    /** Length of the block without its own header. */
    static final int BYTES = 34;

    /** The smallest block that the format allows. */
    private static final int LEAST_BLOCK_FRAMES = 16;
    /** More than a frame's header and check sum and its channels' headers take. */
    private static final int OVERHEAD_BYTES = 256;

    /** Reads the block; empty when what it says cannot be, so that it must be damaged. */
    static Optional<FlacInfo> of(byte[] block) {
        ByteBuffer bytes = ByteBuffer.wrap(block);
        int blockFrames = Short.toUnsignedInt(bytes.getShort());
        int mostBlockFrames = Short.toUnsignedInt(bytes.getShort());
        int mostFrameBytes = (int) (bytes.getLong(3) & 0xff_ffff);
        long rest = bytes.getLong(10);
        int rateHz = (int) (rest >>> 44);
        int channels = (int) (rest >>> 41 & 7) + 1;
        int bits = (int) (rest >>> 36 & 31) + 1;
        boolean canBe = blockFrames >= LEAST_BLOCK_FRAMES
                && mostBlockFrames >= blockFrames
                && rateHz >= 4_000
                && rateHz <= 384_000
                && bits >= 4;
        long lengthFrames = rest & 0xf_ffff_ffffL;
        return canBe
                ? Optional.of(new FlacInfo(
                        blockFrames, mostBlockFrames, mostFrameBytes, rateHz, channels, bits, lengthFrames))
                : Optional.empty();
    }

    /** No frame is longer: what it would take uncoded, or what the file says. */
    int limitBytes() {
        int uncoded = OVERHEAD_BYTES + (mostBlockFrames * channels * (bits + 1) + 7) / 8;
        return Math.max(uncoded, mostFrameBytes);
    }
}
