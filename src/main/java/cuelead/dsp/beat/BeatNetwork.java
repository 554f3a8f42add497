package cuelead.dsp.beat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.DoubleConsumer;

/**
 * A small network of our own that hears beats: convolutions over bands, then dilated residual blocks along time (a
 * temporal convolutional network, after Davies and Böck 2019, "Temporal convolutional networks for musical audio beat
 * tracking", and Böck and Davies 2020). Its layers and weights are resources beside this class, with their recipe.
 *
 * <p>Immutable; safe on any thread.
 */
public final class BeatNetwork {
    private static final int BLOCK_FRAMES = 512;

    private final NetworkShape shape;
    /** Frames that the front layers need on either side. */
    private final int reach;

    private BeatNetwork(NetworkShape shape) {
        this.shape = shape;
        this.reach =
                shape.front().stream().mapToInt(layer -> layer.frameTaps() / 2).sum();
    }

    /** The network that the program brings with it. */
    public static BeatNetwork load() {
        ByteBuffer bytes = ByteBuffer.wrap(resource("net.f32")).order(ByteOrder.LITTLE_ENDIAN);
        Weights weights = new Weights(bytes.asFloatBuffer());
        NetworkShape shape = NetworkShape.read(new String(resource("net.txt"), StandardCharsets.UTF_8), weights);
        if (weights.left() > 0) {
            throw new IllegalStateException(weights.left() + " weights belong to no layer");
        }
        return new BeatNetwork(shape);
    }

    private static byte[] resource(String name) {
        try (InputStream in = BeatNetwork.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the network's file is missing: " + name);
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Listens to a whole song.
     *
     * @param progress told the share that is done, 0 to 1
     */
    public Activations hear(BandSpectrum song, DoubleConsumer progress) {
        return hear(song, BLOCK_FRAMES, progress);
    }

    /** As {@link #hear(BandSpectrum, DoubleConsumer)}; the front layers work on so many frames at a time. */
    Activations hear(BandSpectrum song, int blockFrames, DoubleConsumer progress) {
        int frames = song.frames();
        float[][] x = new float[channels()][frames];
        for (int from = 0; from < frames; from += blockFrames) {
            front(song, from, Math.min(blockFrames, frames - from), x);
            progress.accept(0.5 * from / frames);
        }
        for (int i = 0; i < shape.back().size(); i++) {
            shape.back().get(i).apply(x);
            progress.accept(0.5 + 0.5 * (i + 1) / shape.back().size());
        }
        for (float[] row : x) {
            Elu.apply(row, frames);
        }
        float[][] out = new float[shape.out().outputs()][frames];
        shape.out().apply(x, out);
        for (float[] row : out) {
            sigmoid(row);
        }
        return new Activations(out[0], out[1], out[2]);
    }

    private int channels() {
        return shape.out().inputs();
    }

    private void front(BandSpectrum song, int from, int count, float[][] x) {
        int first = from - reach;
        float[][][] run = {song.compressed(shape.gain(), first, count + 2 * reach)};
        for (Convolution2d layer : shape.front()) {
            run = layer.apply(run);
            first += layer.frameTaps() / 2;
            silenceOutside(run, first, song.frames());
        }
        for (int channel = 0; channel < run.length; channel++) {
            System.arraycopy(run[channel][0], 0, x[channel], from, count);
        }
    }

    /** To every layer, what lies outside of the song is 0. */
    private static void silenceOutside(float[][][] run, int firstFrame, int songFrames) {
        int count = run[0][0].length;
        int before = Math.min(count, Math.max(0, -firstFrame));
        int end = Math.max(0, Math.min(count, songFrames - firstFrame));
        for (float[][] channel : run) {
            for (float[] band : channel) {
                Arrays.fill(band, 0, before, 0);
                Arrays.fill(band, end, count, 0);
            }
        }
    }

    private static void sigmoid(float[] values) {
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) (1 / (1 + Math.exp(-values[i])));
        }
    }
}
