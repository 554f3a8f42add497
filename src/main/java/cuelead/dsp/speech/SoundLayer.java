package cuelead.dsp.speech;

import cuelead.dsp.beat.Weights;
import java.util.Arrays;

/**
 * The last layer of the network: from what it hears in a frame to how likely each sound is. It can be fitted to a speaker
 * whose words are mostly known (speaker adaptation by training on from the speaker-independent weights: Neto and others
 * 1995, "Speaker-adaptation for hybrid HMM-ANN continuous speech recognition system", Eurospeech), held near to the first weights.
 *
 * <p>Immutable.
 */
final class SoundLayer {
    private static final int ROUNDS = 40;
    /** Of the longest step that is sure to go down. */
    private static final double STEP = 1;

    private static final float MOMENTUM = 0.9f;
    /** Pulls back to where the weights came from. */
    private static final float HOLD = 0.02f;

    private final int inputs;
    private final float[][] weights;
    private final float[] bias;

    private SoundLayer(int inputs, float[][] weights, float[] bias) {
        this.inputs = inputs;
        this.weights = weights;
        this.bias = bias;
    }

    static SoundLayer read(Weights numbers, int outputs, int inputs) {
        float[][] weights = new float[outputs][];
        for (int o = 0; o < outputs; o++) {
            weights[o] = numbers.take(inputs);
        }
        return new SoundLayer(inputs, weights, numbers.take(outputs));
    }

    /** Logarithms of odds, by sound, then frame; not yet made to add up to one. */
    float[][] apply(float[][] heard) {
        int frames = heard[0].length;
        float[][] out = new float[weights.length][frames];
        for (int o = 0; o < out.length; o++) {
            Arrays.fill(out[o], bias[o]);
            for (int i = 0; i < inputs; i++) {
                float weight = weights[o][i];
                for (int t = 0; t < frames; t++) {
                    out[o][t] += weight * heard[i][t];
                }
            }
        }
        return out;
    }

    /** Turns them into logarithms of probabilities, in place. */
    static void normalize(float[][] odds) {
        for (int frame = 0; frame < odds[0].length; frame++) {
            float most = Float.NEGATIVE_INFINITY;
            for (float[] sound : odds) {
                most = Math.max(most, sound[frame]);
            }
            double sum = 0;
            for (float[] sound : odds) {
                sum += Math.exp(sound[frame] - most);
            }
            float logSum = (float) (most + Math.log(sum));
            for (float[] sound : odds) {
                sound[frame] -= logSum;
            }
        }
    }

    /**
     * Fitted to a speaker: cross entropy, by steps along the gradient with
     * momentum (Polyak 1964, "Some methods of speeding up the convergence of iteration methods").
     *
     * @param heard  what the layers before hear, by channel, then frame; only frames with a sound
     * @param sounds the sound of each frame
     */
    SoundLayer fitted(float[][] heard, int[] sounds) {
        int frames = sounds.length;
        double energy = 0;
        for (float[] channel : heard) {
            for (float value : channel) {
                energy += value * value / frames;
            }
        }
        float[][] fitted = new float[weights.length][];
        for (int o = 0; o < fitted.length; o++) {
            fitted[o] = weights[o].clone();
        }
        SoundLayer now = new SoundLayer(inputs, fitted, bias.clone());
        float[][] speed = new float[weights.length][inputs + 1];
        float step = (float) (STEP / (1 + energy));
        for (int round = 0; round < ROUNDS; round++) {
            now.descend(heard, sounds, step, speed, this);
        }
        return now;
    }

    /** @param speed by sound, then input and last the bias; changed */
    private void descend(float[][] heard, int[] sounds, float step, float[][] speed, SoundLayer from) {
        int frames = sounds.length;
        float[][] missing = apply(heard);
        normalize(missing);
        for (int o = 0; o < missing.length; o++) {
            for (int t = 0; t < frames; t++) {
                missing[o][t] = (o == sounds[t] ? 1 : 0) - (float) Math.exp(missing[o][t]);
            }
        }
        for (int o = 0; o < missing.length; o++) {
            for (int i = 0; i < inputs; i++) {
                float slope = product(missing[o], heard[i]) / frames - HOLD * (weights[o][i] - from.weights[o][i]);
                speed[o][i] = MOMENTUM * speed[o][i] + step * slope;
                weights[o][i] += speed[o][i];
            }
            float slope = 0;
            for (float one : missing[o]) {
                slope += one / frames;
            }
            speed[o][inputs] = MOMENTUM * speed[o][inputs] + step * slope;
            bias[o] += speed[o][inputs];
        }
    }

    /** Four sums at a time, which the processor adds side by side. */
    private static float product(float[] a, float[] b) {
        float first = 0;
        float second = 0;
        float third = 0;
        float fourth = 0;
        int t = 0;
        for (; t + 3 < a.length; t += 4) {
            first += a[t] * b[t];
            second += a[t + 1] * b[t + 1];
            third += a[t + 2] * b[t + 2];
            fourth += a[t + 3] * b[t + 3];
        }
        for (; t < a.length; t++) {
            first += a[t] * b[t];
        }
        return first + second + (third + fourth);
    }
}
