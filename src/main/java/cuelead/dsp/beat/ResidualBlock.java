package cuelead.dsp.beat;

import java.util.Arrays;

/**
 * Two dilated convolutions side by side, mixed and added to what went in: the block of Böck and Davies 2020,
 * "Deconstruct, analyse, reconstruct: how to improve tempo, beat, and downbeat estimation", section 2.2.
 *
 * @param near the convolution of the smaller dilation
 * @param far  the one of the larger
 * @param mix  from both to as many channels as went in
 */
record ResidualBlock(Convolution1d near, Convolution1d far, Convolution1d mix) {
    static ResidualBlock read(Weights weights, int channels, int taps, int dilation) {
        return new ResidualBlock(
                Convolution1d.read(weights, channels, channels, taps, dilation),
                Convolution1d.read(weights, channels, channels, taps, 2 * dilation),
                Convolution1d.read(weights, channels, 2 * channels, 1, 1));
    }

    /** Changes {@code x} (by channel, then frame) in place. */
    void apply(float[][] x) {
        int channels = x.length;
        int frames = x[0].length;
        float[][] both = new float[2 * channels][frames];
        near.apply(x, Arrays.copyOfRange(both, 0, channels));
        far.apply(x, Arrays.copyOfRange(both, channels, 2 * channels));
        for (float[] row : both) {
            Elu.apply(row, frames);
        }
        float[][] mixed = new float[channels][frames];
        mix.apply(both, mixed);
        for (int channel = 0; channel < channels; channel++) {
            MultiplyAdd.run(1, mixed[channel], 0, x[channel], 0, frames);
        }
    }
}
