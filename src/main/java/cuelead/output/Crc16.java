package cuelead.output;

/** The check sum of the MP3 info tag: polynomial x^16 + x^15 + x^2 + 1, lowest bit first, from 0 (known as CRC-16/ARC). */
final class Crc16 {
    private static final int POLYNOMIAL = 0xa001;

    private int sum;

    void add(byte[] bytes, int from, int count) {
        for (int i = from; i < from + count; i++) {
            sum ^= bytes[i] & 0xff;
            for (int bit = 0; bit < Byte.SIZE; bit++) {
                sum = (sum & 1) == 0 ? sum >> 1 : sum >> 1 ^ POLYNOMIAL;
            }
        }
    }

    short value() {
        return (short) sum;
    }
}
