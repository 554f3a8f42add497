package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RealFftTest {
    /** Against the sum that defines the transform. */
    @Property(tries = 30)
    void isTheTransform(@ForAll @IntRange(min = 2, max = 9) int power, @ForAll long seed) {
        int length = 1 << power;
        Random random = new Random(seed);
        float[] frame = new float[length];
        for (int i = 0; i < length; i++) {
            frame[i] = random.nextFloat() - 0.5f;
        }
        RealFft fft = new RealFft(length);
        float[] magnitudes = new float[fft.bins()];
        fft.magnitudes(frame, magnitudes);
        assertEquals(length / 2 + 1, magnitudes.length);
        for (int bin = 0; bin < magnitudes.length; bin++) {
            assertEquals(defined(frame, bin), magnitudes[bin], 1e-4 * length, "bin " + bin + " of " + length);
        }
    }

    private static double defined(float[] frame, int bin) {
        double re = 0;
        double im = 0;
        for (int n = 0; n < frame.length; n++) {
            double angle = 2 * Math.PI * bin * n / frame.length;
            re += frame[n] * Math.cos(angle);
            im -= frame[n] * Math.sin(angle);
        }
        return Math.hypot(re, im);
    }

    @Test
    void takesOnlyPowersOfTwo() {
        assertThrows(IllegalArgumentException.class, () -> new RealFft(1000));
        assertThrows(IllegalArgumentException.class, () -> new RealFft(2));
    }
}
