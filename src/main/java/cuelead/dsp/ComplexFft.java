package cuelead.dsp;

/**
 * The discrete Fourier transform of complex frames whose length is a power of two, and its inverse: radix 4, self-sorting
 * (Stockham; Van Loan 1992, "Computational frameworks for the fast Fourier transform", section 1.7), real and imaginary
 * parts in arrays of their own, so that inner loops run over neighbours.
 *
 * <p>Holds work space: one a thread. Realtime-safe.
 */
public final class ComplexFft {
    private final int length;
    private final float[] cosine;
    private final float[] sine;
    private final float[] workRe;
    private final float[] workIm;

    /** @param length samples in a frame; a power of two, at least 4 */
    public ComplexFft(int length) {
        if (length < 4 || Integer.bitCount(length) != 1) {
            throw new IllegalArgumentException("a frame's length must be a power of two from 4 on: " + length);
        }
        this.length = length;
        cosine = new float[length];
        sine = new float[length];
        for (int i = 0; i < length; i++) {
            cosine[i] = (float) Math.cos(2 * Math.PI * i / length);
            sine[i] = (float) -Math.sin(2 * Math.PI * i / length);
        }
        workRe = new float[length];
        workIm = new float[length];
    }

    /** Transforms in place; not scaled. */
    public void forward(float[] re, float[] im) {
        float[] fromRe = re;
        float[] fromIm = im;
        float[] toRe = workRe;
        float[] toIm = workIm;
        int stride = 1;
        for (int left = length; left > 1; ) {
            if (left == 2) {
                pairs(fromRe, fromIm, toRe, toIm, stride);
                left = 1;
            } else {
                fours(left, stride, fromRe, fromIm, toRe, toIm);
                left /= 4;
                stride *= 4;
            }
            float[] re0 = fromRe;
            float[] im0 = fromIm;
            fromRe = toRe;
            fromIm = toIm;
            toRe = re0;
            toIm = im0;
        }
        if (fromRe != re) {
            System.arraycopy(fromRe, 0, re, 0, length);
            System.arraycopy(fromIm, 0, im, 0, length);
        }
    }

    /** Transforms back in place; {@code length} times too large. */
    public void inverse(float[] re, float[] im) {
        forward(im, re);
    }

    private void fours(int left, int stride, float[] xRe, float[] xIm, float[] yRe, float[] yIm) {
        int quarter = left / 4;
        if (stride == 1) {
            firstFours(quarter, xRe, xIm, yRe, yIm);
            return;
        }
        for (int p = 0; p < quarter; p++) {
            int turn = p * stride;
            four(
                    quarter * stride,
                    stride,
                    p * stride,
                    4 * p * stride,
                    cosine[turn],
                    sine[turn],
                    cosine[2 * turn],
                    sine[2 * turn],
                    cosine[3 * turn],
                    sine[3 * turn],
                    xRe,
                    xIm,
                    yRe,
                    yIm);
        }
    }

    @SuppressWarnings("checkstyle:ParameterNumber")
    private static void four(
            int apart,
            int stride,
            int from,
            int to,
            float c1,
            float s1,
            float c2,
            float s2,
            float c3,
            float s3,
            float[] xRe,
            float[] xIm,
            float[] yRe,
            float[] yIm) {
        for (int q = 0; q < stride; q++) {
            int i = from + q;
            float aRe = xRe[i] + xRe[i + 2 * apart];
            float aIm = xIm[i] + xIm[i + 2 * apart];
            float bRe = xRe[i] - xRe[i + 2 * apart];
            float bIm = xIm[i] - xIm[i + 2 * apart];
            float cRe = xRe[i + apart] + xRe[i + 3 * apart];
            float cIm = xIm[i + apart] + xIm[i + 3 * apart];
            float dRe = xIm[i + 3 * apart] - xIm[i + apart];
            float dIm = xRe[i + apart] - xRe[i + 3 * apart];
            int o = to + q;
            yRe[o] = aRe + cRe;
            yIm[o] = aIm + cIm;
            float eRe = bRe - dRe;
            float eIm = bIm - dIm;
            yRe[o + stride] = eRe * c1 - eIm * s1;
            yIm[o + stride] = eRe * s1 + eIm * c1;
            float fRe = aRe - cRe;
            float fIm = aIm - cIm;
            yRe[o + 2 * stride] = fRe * c2 - fIm * s2;
            yIm[o + 2 * stride] = fRe * s2 + fIm * c2;
            float gRe = bRe + dRe;
            float gIm = bIm + dIm;
            yRe[o + 3 * stride] = gRe * c3 - gIm * s3;
            yIm[o + 3 * stride] = gRe * s3 + gIm * c3;
        }
    }

    private void firstFours(int quarter, float[] xRe, float[] xIm, float[] yRe, float[] yIm) {
        for (int p = 0; p < quarter; p++) {
            float aRe = xRe[p] + xRe[p + 2 * quarter];
            float aIm = xIm[p] + xIm[p + 2 * quarter];
            float bRe = xRe[p] - xRe[p + 2 * quarter];
            float bIm = xIm[p] - xIm[p + 2 * quarter];
            float cRe = xRe[p + quarter] + xRe[p + 3 * quarter];
            float cIm = xIm[p + quarter] + xIm[p + 3 * quarter];
            float dRe = xIm[p + 3 * quarter] - xIm[p + quarter];
            float dIm = xRe[p + quarter] - xRe[p + 3 * quarter];
            int o = 4 * p;
            yRe[o] = aRe + cRe;
            yIm[o] = aIm + cIm;
            float eRe = bRe - dRe;
            float eIm = bIm - dIm;
            yRe[o + 1] = eRe * cosine[p] - eIm * sine[p];
            yIm[o + 1] = eRe * sine[p] + eIm * cosine[p];
            float fRe = aRe - cRe;
            float fIm = aIm - cIm;
            yRe[o + 2] = fRe * cosine[2 * p] - fIm * sine[2 * p];
            yIm[o + 2] = fRe * sine[2 * p] + fIm * cosine[2 * p];
            float gRe = bRe + dRe;
            float gIm = bIm + dIm;
            yRe[o + 3] = gRe * cosine[3 * p] - gIm * sine[3 * p];
            yIm[o + 3] = gRe * sine[3 * p] + gIm * cosine[3 * p];
        }
    }

    private static void pairs(float[] xRe, float[] xIm, float[] yRe, float[] yIm, int stride) {
        for (int q = 0; q < stride; q++) {
            float re = xRe[q + stride];
            float im = xIm[q + stride];
            yRe[q] = xRe[q] + re;
            yIm[q] = xIm[q] + im;
            yRe[q + stride] = xRe[q] - re;
            yIm[q + stride] = xIm[q] - im;
        }
    }
}
