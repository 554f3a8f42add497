package cuelead.song;

import java.util.Optional;

/**
 * The four bytes in front of each MPEG audio frame (ISO/IEC 11172-3, section 2.4.1.3; ISO/IEC 13818-3 for the
 * lower rates; the 8, 11.025 and 12 kHz of "MPEG 2.5" as encoders write them).
 *
 * @param version      3 = MPEG 1, 2 = MPEG 2, 0 = MPEG 2.5
 * @param layer        1 to 3
 * @param rateHz       frames a second
 * @param isMono       one channel
 * @param byteCount    length of the whole frame in the file, these four bytes included
 */
record Mp3Header(int version, int layer, int rateHz, boolean isMono, int byteCount) {
    static final int BYTES = 4;
    private static final int MPEG_1 = 3;
    private static final int[] MPEG_1_HZ = {44_100, 48_000, 32_000};
    private static final int[][] MPEG_1_KBPS = {
        {0, 32, 64, 96, 128, 160, 192, 224, 256, 288, 320, 352, 384, 416, 448},
        {0, 32, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320, 384},
        {0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320}
    };
    private static final int[] MPEG_2_LAYER_1_KBPS = {0, 32, 48, 56, 64, 80, 96, 112, 128, 144, 160, 176, 192, 224, 256
    };
    private static final int[] MPEG_2_KBPS = {0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160};

    /** The header at a place, if there is one that can be played. */
    static Optional<Mp3Header> at(byte[] bytes, int at, int end) {
        if (at < 0 || at + BYTES > end || bytes[at] != (byte) 0xff || (bytes[at + 1] & 0xe0) != 0xe0) {
            return Optional.empty();
        }
        int version = bytes[at + 1] >> 3 & 3;
        int layer = 4 - (bytes[at + 1] >> 1 & 3);
        int rateIndex = bytes[at + 2] >> 2 & 3;
        int kbpsIndex = bytes[at + 2] >> 4 & 15;
        if (version == 1 || layer == 4 || rateIndex == 3 || kbpsIndex == 0 || kbpsIndex == 15) {
            return Optional.empty();
        }
        int halvings = version == MPEG_1 ? 0 : version == 2 ? 1 : 2;
        int rateHz = MPEG_1_HZ[rateIndex] >> halvings;
        int bitsPerSecond = 1_000 * kbps(version, layer, kbpsIndex);
        int padding = bytes[at + 2] >> 1 & 1;
        int byteCount = layer == 1
                ? (12 * bitsPerSecond / rateHz + padding) * 4
                : samplesPerFrame(version, layer) / 8 * bitsPerSecond / rateHz + padding;
        boolean isMono = (bytes[at + 3] >> 6 & 3) == 3;
        return Optional.of(new Mp3Header(version, layer, rateHz, isMono, byteCount));
    }

    /** Whether a frame of layer III begins here whose length is not told, since its bit rate is none of the table's. */
    static boolean isFree(byte[] bytes, int at, int end) {
        return at + BYTES <= end
                && bytes[at] == (byte) 0xff
                && (bytes[at + 1] & 0xe6) == 0xe2
                && (bytes[at + 1] >> 3 & 3) != 1
                && (bytes[at + 2] & 0xf0) == 0
                && (bytes[at + 2] >> 2 & 3) != 3;
    }

    /** PCM frames that one MPEG frame decodes to. */
    int samplesPerFrame() {
        return samplesPerFrame(version, layer);
    }

    /** Whether both can belong to one stream. */
    boolean continues(Mp3Header other) {
        return version == other.version && layer == other.layer && rateHz == other.rateHz && isMono == other.isMono;
    }

    /** Where the Xing or Info tag lies in a first frame of layer III: after the side information. */
    int tagOffset() {
        int sideBytes = version == MPEG_1 ? (isMono ? 17 : 32) : (isMono ? 9 : 17);
        return BYTES + sideBytes;
    }

    private static int samplesPerFrame(int version, int layer) {
        if (layer == 1) {
            return 384;
        }
        return layer == 3 && version != MPEG_1 ? 576 : 1_152;
    }

    private static int kbps(int version, int layer, int index) {
        if (version == MPEG_1) {
            return MPEG_1_KBPS[layer - 1][index];
        }
        return layer == 1 ? MPEG_2_LAYER_1_KBPS[index] : MPEG_2_KBPS[index];
    }
}
