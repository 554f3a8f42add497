package cuelead.dsp;

/**
 * Magnitudes of the discrete Fourier transform of real frames whose length is a power of two: a radix-2 transform in
 * place (Cooley and Tukey 1965, "An algorithm for the machine calculation of complex Fourier series") of half the
 * length, with the even samples as real and the odd ones as imaginary parts (Sorensen, Jones, Heideman and Burrus 1987,
 * "Real-valued fast Fourier transform algorithms", section II).
 *
 * <p>Holds work space: one a thread.
 */
public final class RealFft {
    private final int half;
    private final float[] cosine;
    private final float[] sine;
    private final int[] reversed;
    private final float[] re;
    private final float[] im;

    /** @param length samples in a frame; a power of two, at least 4 */
    public RealFft(int length) {
        if (length < 4 || Integer.bitCount(length) != 1) {
            throw new IllegalArgumentException("a frame's length must be a power of two from 4 on: " + length);
        }
        half = length / 2;
        cosine = new float[half];
        sine = new float[half];
        reversed = new int[half];
        int bits = Integer.numberOfTrailingZeros(half);
        for (int i = 0; i < half; i++) {
            cosine[i] = (float) Math.cos(2 * Math.PI * i / length);
            sine[i] = (float) -Math.sin(2 * Math.PI * i / length);
            reversed[i] = Integer.reverse(i) >>> (Integer.SIZE - bits);
        }
        re = new float[half];
        im = new float[half];
    }

    /** How many bins {@link #magnitudes} gives: half the length and one. */
    public int bins() {
        return half + 1;
    }

    /**
     * Absolute values of bins 0 (constant) to half the length (Nyquist).
     *
     * @param frame      as many samples as the length; read only
     * @param magnitudes overwritten; {@link #bins} long
     */
    public void magnitudes(float[] frame, float[] magnitudes) {
        for (int i = 0; i < half; i++) {
            re[reversed[i]] = frame[2 * i];
            im[reversed[i]] = frame[2 * i + 1];
        }
        butterflies();
        magnitudes[0] = Math.abs(re[0] + im[0]);
        magnitudes[half] = Math.abs(re[0] - im[0]);
        for (int k = 1; k < half; k++) {
            int mirror = half - k;
            float evenRe = (re[k] + re[mirror]) / 2;
            float evenIm = (im[k] - im[mirror]) / 2;
            float oddRe = (im[k] + im[mirror]) / 2;
            float oddIm = (re[mirror] - re[k]) / 2;
            float x = evenRe + cosine[k] * oddRe - sine[k] * oddIm;
            float y = evenIm + cosine[k] * oddIm + sine[k] * oddRe;
            magnitudes[k] = (float) Math.sqrt(x * x + y * y);
        }
    }

    private void butterflies() {
        for (int size = 1; size < half; size *= 2) {
            int step = half / size;
            for (int start = 0; start < half; start += 2 * size) {
                for (int j = 0; j < size; j++) {
                    int low = start + j;
                    int high = low + size;
                    float c = cosine[j * step];
                    float s = sine[j * step];
                    float x = re[high] * c - im[high] * s;
                    float y = re[high] * s + im[high] * c;
                    re[high] = re[low] - x;
                    im[high] = im[low] - y;
                    re[low] += x;
                    im[low] += y;
                }
            }
        }
    }
}
