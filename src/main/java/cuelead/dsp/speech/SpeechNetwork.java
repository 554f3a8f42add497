package cuelead.dsp.speech;

import cuelead.dsp.beat.Convolution1d;
import cuelead.dsp.beat.Weights;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * A small network of our own that hears sounds of speech: dilated convolutions along time, each added to what comes in
 * (after Waibel, Hanazawa, Hinton, Shikano and Lang 1989, "Phoneme recognition using time-delay neural networks", IEEE Trans.
 * Acoust. Speech Signal Proc. 37). Its weights and their recipe are resources beside this class. What it gives are
 * posteriors; divided by how frequent each sound was in training they are likelihoods (Bourlard and Morgan 1994,
 * "Connectionist speech recognition", chapter 7).
 *
 * <p>Immutable; safe on any thread.
 */
public final class SpeechNetwork {
    private static final int CHANNELS = 96;
    private static final int[] TAPS = {5, 3, 3, 3, 3};
    private static final int[] DILATIONS = {1, 2, 4, 6, 10};

    private final Convolution1d[] layers = new Convolution1d[TAPS.length];
    private final SoundLayer out;
    private final float[] logPriors;

    private SpeechNetwork(Weights weights) {
        for (int i = 0; i < layers.length; i++) {
            layers[i] =
                    Convolution1d.read(weights, CHANNELS, i == 0 ? MelBands.BANDS : CHANNELS, TAPS[i], DILATIONS[i]);
        }
        out = SoundLayer.read(weights, PhoneOdds.phones(), CHANNELS);
        logPriors = weights.take(PhoneOdds.phones());
        if (weights.left() > 0) {
            throw new IllegalStateException(weights.left() + " weights belong to no layer");
        }
    }

    /** The network that the program brings with it. */
    public static SpeechNetwork load() {
        try (InputStream in = SpeechNetwork.class.getResourceAsStream("speech.f32")) {
            if (in == null) {
                throw new IllegalStateException("the network's file is missing: speech.f32");
            }
            ByteBuffer bytes = ByteBuffer.wrap(in.readAllBytes()).order(ByteOrder.LITTLE_ENDIAN);
            return new SpeechNetwork(new Weights(bytes.asFloatBuffer()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Listens to a whole sound.
     *
     * @param samples one channel at {@link MelBands#RATE}
     */
    public HeardSpeech hear(float[] samples) {
        return new HeardSpeech(channels(MelBands.of(samples)), out, logPriors);
    }

    /** What comes out of the last layer, by sound, then frame. */
    float[][] activations(float[][] bands) {
        return out.apply(channels(bands));
    }

    private float[][] channels(float[][] bands) {
        int frames = bands[0].length;
        float[][] x = new float[CHANNELS][frames];
        float[][] y = new float[CHANNELS][frames];
        layers[0].apply(bands, x);
        for (float[] channel : x) {
            rectify(channel);
        }
        for (int i = 1; i < layers.length; i++) {
            layers[i].apply(x, y);
            for (int channel = 0; channel < CHANNELS; channel++) {
                rectify(y[channel]);
                add(y[channel], x[channel]);
            }
        }
        return x;
    }

    private static void rectify(float[] values) {
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.max(0, values[i]);
        }
    }

    private static void add(float[] values, float[] to) {
        for (int i = 0; i < values.length; i++) {
            to[i] += values[i];
        }
    }
}
