package cuelead.dsp.beat;

import java.util.Arrays;

/**
 * A convolution along time with gaps between its taps (Yu and Koltun 2016, "Multi-scale context aggregation by dilated
 * convolutions"). Frames outside the song count as 0.
 */
public final class Convolution1d {
    /** So many frames are worked on at a time that they stay in the processor's nearest cache. */
    private static final int BLOCK_FRAMES = 1024;

    private final int outputs;
    private final int inputs;
    private final int taps;
    private final int dilation;
    private final float[] weights;
    private final float[] bias;

    /**
     * @param outputs  channels out
     * @param inputs   channels in
     * @param taps     odd; tap k looks at frame t + (k - taps / 2) * dilation
     * @param dilation frames between taps
     * @param weights  by output, input, tap
     * @param bias     by output
     */
    private Convolution1d(int outputs, int inputs, int taps, int dilation, float[] weights, float[] bias) {
        this.outputs = outputs;
        this.inputs = inputs;
        this.taps = taps;
        this.dilation = dilation;
        this.weights = weights;
        this.bias = bias;
    }

    public static Convolution1d read(Weights weights, int outputs, int inputs, int taps, int dilation) {
        return new Convolution1d(
                outputs, inputs, taps, dilation, weights.take(outputs * inputs * taps), weights.take(outputs));
    }

    /**
     * Convolves a whole song.
     *
     * @param in  by input channel, then frame
     * @param out by output channel, then frame; overwritten
     */
    public void apply(float[][] in, float[][] out) {
        int frames = in[0].length;
        for (int from = 0; from < frames; from += BLOCK_FRAMES) {
            int to = Math.min(frames, from + BLOCK_FRAMES);
            for (int o = 0; o < outputs; o++) {
                Arrays.fill(out[o], from, to, bias[o]);
                for (int i = 0; i < inputs; i++) {
                    addTaps(in[i], out[o], (o * inputs + i) * taps, from, to);
                }
            }
        }
    }

    private void addTaps(float[] in, float[] out, int firstWeight, int from, int to) {
        for (int k = 0; k < taps; k++) {
            int shift = (k - taps / 2) * dilation;
            int first = Math.max(from, -shift);
            int last = Math.min(to, in.length - shift);
            MultiplyAdd.run(weights[firstWeight + k], in, first + shift, out, first, last - first);
        }
    }

    int outputs() {
        return outputs;
    }

    int inputs() {
        return inputs;
    }
}
