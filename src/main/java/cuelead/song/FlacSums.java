package cuelead.song;

/**
 * The check sums of FLAC: over each frame's header (RFC 9639, section 9.1.8; polynomial x^8 + x^2 + x + 1) and
 * over each frame (section 9.3; x^16 + x^15 + x^2 + 1), both from 0 on and the highest bit first.
 */
final class FlacSums {
    private static final int[] HEADER = table(8, 0x07);
    private static final int[] FRAME = table(16, 0x8005);

    private FlacSums() {}

    static int header(byte[] bytes, int from, int to) {
        int sum = 0;
        for (int i = from; i < to; i++) {
            sum = HEADER[sum ^ (bytes[i] & 0xff)];
        }
        return sum;
    }

    /** The sum {@code before} carried on; 0 behind a whole frame, its own check sum included. */
    static int frame(int before, byte[] bytes, int from, int to) {
        int sum = before;
        for (int i = from; i < to; i++) {
            sum = (sum << 8 & 0xffff) ^ FRAME[sum >> 8 ^ (bytes[i] & 0xff)];
        }
        return sum;
    }

    private static int[] table(int bits, int polynomial) {
        int[] table = new int[256];
        int top = 1 << (bits - 1);
        for (int value = 0; value < table.length; value++) {
            int sum = value << (bits - 8);
            for (int bit = 0; bit < 8; bit++) {
                sum = (sum & top) == 0 ? sum << 1 : sum << 1 ^ polynomial;
            }
            table[value] = sum & ((1 << bits) - 1);
        }
        return table;
    }
}
