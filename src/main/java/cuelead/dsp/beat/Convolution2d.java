package cuelead.dsp.beat;

import java.util.Arrays;

/**
 * A convolution over bands and frames (cross-correlation, without padding), then the largest of each group of bands, then
 * {@link Elu}.
 */
final class Convolution2d {
    private final int outputs;
    private final int inputs;
    private final int frameTaps;
    private final int bandTaps;
    private final int pool;
    private final float[] weights;
    private final float[] bias;

    /**
     * @param outputs   channels out
     * @param inputs    channels in
     * @param frameTaps frames that a filter covers
     * @param bandTaps  bands that it covers
     * @param pool      bands of which the largest is kept; a remainder is dropped
     * @param weights   by output, input, frame, band
     * @param bias      by output
     */
    private Convolution2d(
            int outputs, int inputs, int frameTaps, int bandTaps, int pool, float[] weights, float[] bias) {
        this.outputs = outputs;
        this.inputs = inputs;
        this.frameTaps = frameTaps;
        this.bandTaps = bandTaps;
        this.pool = pool;
        this.weights = weights;
        this.bias = bias;
    }

    static Convolution2d read(Weights weights, int outputs, int inputs, int frameTaps, int bandTaps, int pool) {
        return new Convolution2d(
                outputs,
                inputs,
                frameTaps,
                bandTaps,
                pool,
                weights.take(outputs * inputs * frameTaps * bandTaps),
                weights.take(outputs));
    }

    /**
     * Convolves a run of frames.
     *
     * @param in by channel, band, frame
     * @return the same, with {@code frameTaps - 1} frames less: frame t covers t to {@code t + frameTaps - 1} of the input
     */
    float[][][] apply(float[][][] in) {
        int frames = in[0][0].length - frameTaps + 1;
        int bands = (in[0].length - bandTaps + 1) / pool;
        float[][][] out = new float[outputs][bands][frames];
        float[] sum = new float[frames];
        for (int o = 0; o < outputs; o++) {
            for (int band = 0; band < bands * pool; band++) {
                convolve(in, o, band, sum);
                keepLargest(sum, out[o][band / pool], band % pool);
            }
            for (float[] row : out[o]) {
                Elu.apply(row, frames);
            }
        }
        return out;
    }

    private void convolve(float[][][] in, int output, int band, float[] sum) {
        Arrays.fill(sum, bias[output]);
        int weight = output * inputs * frameTaps * bandTaps;
        for (int i = 0; i < inputs; i++) {
            for (int frame = 0; frame < frameTaps; frame++) {
                for (int b = 0; b < bandTaps; b++) {
                    MultiplyAdd.run(weights[weight++], in[i][band + b], frame, sum, 0, sum.length);
                }
            }
        }
    }

    private static void keepLargest(float[] sum, float[] largest, int placeInGroup) {
        if (placeInGroup == 0) {
            System.arraycopy(sum, 0, largest, 0, sum.length);
        } else {
            for (int t = 0; t < sum.length; t++) {
                largest[t] = Math.max(largest[t], sum[t]);
            }
        }
    }

    int frameTaps() {
        return frameTaps;
    }
}
