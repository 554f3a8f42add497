package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class ComplexFftTest {
    /** Against the sum that defines the transform. */
    @Property(tries = 20)
    void isTheTransform(@ForAll @IntRange(min = 2, max = 8) int bits, @ForAll long seed) {
        int length = 1 << bits;
        float[] re = noise(length, seed);
        float[] im = noise(length, seed + 1);
        float[] gotRe = re.clone();
        float[] gotIm = im.clone();
        new ComplexFft(length).forward(gotRe, gotIm);
        for (int bin = 0; bin < length; bin++) {
            double sumRe = 0;
            double sumIm = 0;
            for (int i = 0; i < length; i++) {
                double angle = -2 * Math.PI * bin * i / length;
                sumRe += re[i] * Math.cos(angle) - im[i] * Math.sin(angle);
                sumIm += re[i] * Math.sin(angle) + im[i] * Math.cos(angle);
            }
            assertEquals(sumRe, gotRe[bin], 1e-4 * length);
            assertEquals(sumIm, gotIm[bin], 1e-4 * length);
        }
    }

    @Property(tries = 20)
    void theInverseUndoesIt(@ForAll @IntRange(min = 2, max = 12) int bits, @ForAll long seed) {
        int length = 1 << bits;
        float[] re = noise(length, seed);
        float[] im = noise(length, seed + 1);
        float[] backRe = re.clone();
        float[] backIm = im.clone();
        ComplexFft fft = new ComplexFft(length);
        fft.forward(backRe, backIm);
        fft.inverse(backRe, backIm);
        for (int i = 0; i < length; i++) {
            assertEquals(re[i], backRe[i] / length, 1e-5);
            assertEquals(im[i], backIm[i] / length, 1e-5);
        }
    }

    private static float[] noise(int length, long seed) {
        Random random = new Random(seed);
        float[] noise = new float[length];
        for (int i = 0; i < length; i++) {
            noise[i] = random.nextFloat() - 0.5f;
        }
        return noise;
    }
}
