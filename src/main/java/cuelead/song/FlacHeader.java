package cuelead.song;

import java.util.Optional;

/**
 * The header of one frame of a FLAC file (RFC 9639, section 9.1).
 *
 * @param firstFrame  the sound's frame at which it begins
 * @param blockFrames how many it holds
 */
record FlacHeader(long firstFrame, int blockFrames) {
    /** The longest one, check sum included. */
    static final int MOST_BYTES = 16;

    private static final int LEAST_BYTES = 6;
    private static final int[] BITS = {0, 8, 12, 0, 16, 20, 24, 32};
    private static final int[] RATES_HZ = {
        0, 88_200, 176_400, 192_000, 8_000, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000
    };

    /** The header at a place, if there is one whose check sum is right and that belongs to this sound. */
    static Optional<FlacHeader> at(byte[] bytes, int at, int end, FlacInfo info) {
        if (at + LEAST_BYTES > end || bytes[at] != (byte) 0xff || (bytes[at + 1] & 0xfe) != 0xf8) {
            return Optional.empty();
        }
        int blockCode = bytes[at + 2] >> 4 & 15;
        int rateCode = bytes[at + 2] & 15;
        int numberBytes = numberBytes(bytes[at + 4] & 0xff);
        int numberEnd = at + 4 + numberBytes;
        int blockEnd = numberEnd + (blockCode == 6 ? 1 : blockCode == 7 ? 2 : 0);
        int rateEnd = blockEnd + (rateCode == 12 ? 1 : rateCode == 13 || rateCode == 14 ? 2 : 0);
        if (blockCode == 0 || numberBytes == 0 || rateEnd >= end || !fits(bytes, at, rateCode, info)) {
            return Optional.empty();
        }
        if (FlacSums.header(bytes, at, rateEnd) != (bytes[rateEnd] & 0xff)) {
            return Optional.empty();
        }
        int blockFrames = blockFrames(blockCode, bytes, numberEnd);
        long number = number(bytes, at + 4, numberBytes);
        boolean isFixed = (bytes[at + 1] & 1) == 0;
        long firstFrame = isFixed ? number * info.blockFrames() : number;
        return blockFrames > info.mostBlockFrames()
                ? Optional.empty()
                : Optional.of(new FlacHeader(firstFrame, blockFrames));
    }

    private static boolean fits(byte[] bytes, int at, int rateCode, FlacInfo info) {
        int channelCode = bytes[at + 3] >> 4 & 15;
        int bitsCode = bytes[at + 3] >> 1 & 7;
        int channels = channelCode < 8 ? channelCode + 1 : 2;
        boolean isRate = rateCode == 0 || rateCode >= RATES_HZ.length || RATES_HZ[rateCode] == info.rateHz();
        boolean isBits = bitsCode == 0 || BITS[bitsCode] == info.bits();
        return channelCode < 11
                && channels == info.channels()
                && rateCode != 15
                && isRate
                && isBits
                && (bytes[at + 3] & 1) == 0;
    }

    private static int blockFrames(int code, byte[] bytes, int at) {
        return switch (code) {
            case 1 -> 192;
            case 2, 3, 4, 5 -> 144 << code;
            case 6 -> (bytes[at] & 0xff) + 1;
            case 7 -> ((bytes[at] & 0xff) << 8 | (bytes[at + 1] & 0xff)) + 1;
            default -> 1 << code;
        };
    }

    /** Bytes of a number that is coded as UTF-8 codes characters, by its first; 0 = no such number. */
    private static int numberBytes(int first) {
        int ones = Integer.numberOfLeadingZeros(~(first << 24));
        return ones == 0 ? 1 : ones == 1 || ones == 8 ? 0 : ones;
    }

    private static long number(byte[] bytes, int at, int count) {
        long number = count == 1 ? bytes[at] & 0x7f : bytes[at] & (0x7f >> count);
        for (int i = 1; i < count; i++) {
            number = number << 6 | (bytes[at + i] & 0x3f);
        }
        return number;
    }
}
