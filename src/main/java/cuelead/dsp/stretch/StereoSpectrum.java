package cuelead.dsp.stretch;

import cuelead.dsp.ComplexFft;

/**
 * The spectrum of one window over both channels: the left as real, the right as imaginary part of one complex transform
 * (Press et al., "Numerical recipes", 3rd edition, section 12.3.1). What is asked of a bin is asked of both channels
 * together, so nothing is ever taken apart. Realtime-safe.
 */
final class StereoSpectrum {
    private final int length;
    private final int mask;
    private final ComplexFft fft;
    private final float[] window;
    final float[] re;
    final float[] im;

    StereoSpectrum(ComplexFft fft, float[] window) {
        this.fft = fft;
        this.window = window;
        length = window.length;
        mask = length - 1;
        re = new float[length];
        im = new float[length];
    }

    /** Bins from the constant to half the sample rate. */
    int bins() {
        return length / 2 + 1;
    }

    /** Becomes the spectrum of windowed frames. */
    void transform(float[] interleaved) {
        for (int i = 0; i < length; i++) {
            re[i] = interleaved[2 * i] * window[i];
            im[i] = interleaved[2 * i + 1] * window[i];
        }
        fft.forward(re, im);
    }

    /** Becomes frames again, and adds them, windowed and scaled, to others. */
    void addBack(float[] interleaved, int atFrame, float scale) {
        fft.inverse(re, im);
        for (int i = 0; i < length; i++) {
            float w = window[i] * scale;
            interleaved[2 * (atFrame + i)] += re[i] * w;
            interleaved[2 * (atFrame + i) + 1] += im[i] * w;
        }
    }

    /** Energy of a bin, both channels, twice. */
    float energy(int bin) {
        int m = (length - bin) & mask;
        return re[bin] * re[bin] + im[bin] * im[bin] + re[m] * re[m] + im[m] * im[m];
    }

    void energies(float[] into) {
        for (int bin = 0; bin < into.length; bin++) {
            into[bin] = energy(bin);
        }
    }

    void set(StereoSpectrum other) {
        System.arraycopy(other.re, 0, re, 0, length);
        System.arraycopy(other.im, 0, im, 0, length);
    }

    /** Multiplies a bin of both channels by a complex number. */
    void turn(int bin, float cosine, float sine) {
        float x = re[bin] * cosine - im[bin] * sine;
        im[bin] = re[bin] * sine + im[bin] * cosine;
        re[bin] = x;
        int m = (length - bin) & mask;
        if (m != bin) {
            float y = re[m] * cosine + im[m] * sine;
            im[m] = im[m] * cosine - re[m] * sine;
            re[m] = y;
        }
    }

    /** Multiplies a bin of both channels by a number. */
    void scale(int bin, float gain) {
        re[bin] *= gain;
        im[bin] *= gain;
        int m = (length - bin) & mask;
        if (m != bin) {
            re[m] *= gain;
            im[m] *= gain;
        }
    }

    /** Real part of the product of a bin of this with the conjugate of a bin of another, summed over the channels. */
    float crossRe(int bin, StereoSpectrum other, int otherBin) {
        int m = (length - bin) & mask;
        int n = (length - otherBin) & mask;
        return re[bin] * other.re[otherBin] + im[bin] * other.im[otherBin] + re[m] * other.re[n] + im[m] * other.im[n];
    }

    /** Imaginary part of the same. */
    float crossIm(int bin, StereoSpectrum other, int otherBin) {
        int m = (length - bin) & mask;
        int n = (length - otherBin) & mask;
        return im[bin] * other.re[otherBin] - re[bin] * other.im[otherBin] - im[m] * other.re[n] + re[m] * other.im[n];
    }
}
