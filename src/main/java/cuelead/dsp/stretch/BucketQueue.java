package cuelead.dsp.stretch;

import java.util.Arrays;

/**
 * A queue of small numbers by their energy, the highest first, in steps of 0.75 dB: buckets, and a bit for each that is
 * not empty, so that putting in and taking out cost the same however full it is (Dial 1969, "Algorithm 360:
 * Shortest-path forest with topological ordering"). Of one bucket the last comes first.
 *
 * <p>One thread; realtime-safe.
 */
final class BucketQueue {
    /** Exponent and two bits of the mantissa of a float: four steps to an octave. */
    private static final int SHIFT = 21;

    private static final int BUCKETS = 256;
    private static final int WORD_BITS = 64;

    private final int[] heads = new int[BUCKETS];
    private final long[] filled = new long[BUCKETS / WORD_BITS];
    private final int[] next;
    private int highestBits;

    /** @param numbers how many different numbers there are; each is in the queue once at most */
    BucketQueue(int numbers) {
        next = new int[numbers];
    }

    /** Empties it. Energies above {@code highest} count as that, those far below (190 dB) as equal. */
    void begin(float highest) {
        Arrays.fill(heads, -1);
        Arrays.fill(filled, 0);
        highestBits = Float.floatToRawIntBits(highest) >>> SHIFT;
    }

    void put(int number, float energy) {
        int below = highestBits - (Float.floatToRawIntBits(energy) >>> SHIFT);
        int bucket = Math.max(0, Math.min(BUCKETS - 1, below));
        next[number] = heads[bucket];
        heads[bucket] = number;
        filled[bucket / WORD_BITS] |= 1L << (bucket % WORD_BITS);
    }

    /** Takes out the highest, or -1 when it is empty. */
    int take() {
        for (int word = 0; word < filled.length; word++) {
            if (filled[word] != 0) {
                int bucket = word * WORD_BITS + Long.numberOfTrailingZeros(filled[word]);
                int number = heads[bucket];
                heads[bucket] = next[number];
                if (next[number] < 0) {
                    filled[word] &= filled[word] - 1;
                }
                return number;
            }
        }
        return -1;
    }
}
