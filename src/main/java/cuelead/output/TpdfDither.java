package cuelead.output;

import java.util.SplittableRandom;

/**
 * Rounds samples to 16 bits with triangular dither of two steps' width, which makes the error a steady hiss
 * whatever the signal (Lipshitz, Wannamaker and Vanderkooy 1992, "Quantization and dither: a theoretical
 * survey", JAES 40(5)). The random numbers always begin the same, so equal sound gives equal files.
 */
final class TpdfDither {
    private static final long SEED = 0x43_75_65_6c_65_61_64L;
    private static final double STEPS = 32_768;

    private final SplittableRandom random = new SplittableRandom(SEED);

    /** The next sample (full scale = 1) as a 16-bit number; beyond full scale it is held there. */
    short quantize(float sample) {
        double up = random.nextDouble();
        double down = random.nextDouble();
        return round(sample, up - down);
    }

    /** A sample as the nearest 16-bit number, held at full scale. */
    static short round(float sample, double dither) {
        long rounded = Math.round(sample * STEPS + dither);
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, rounded));
    }
}
