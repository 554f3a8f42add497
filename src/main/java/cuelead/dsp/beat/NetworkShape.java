package cuelead.dsp.beat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;

/**
 * The layers of a network as its text says them, a line each, in order:
 *
 * <pre>
 * gain 10
 * conv OUTPUTS FRAME_TAPS BAND_TAPS POOL
 * block TAPS DILATION
 * out OUTPUTS
 * </pre>
 *
 * Lines that begin with {@code #} are comments.
 *
 * @param gain  of {@link BandSpectrum#compressed}
 * @param front convolutions over bands and frames, until one band is left
 * @param back  blocks along time
 * @param out   the last layer
 */
record NetworkShape(double gain, List<Convolution2d> front, List<ResidualBlock> back, Convolution1d out) {
    /** Reads the layers and takes their weights. */
    static NetworkShape read(String text, Weights weights) {
        double gain = 1;
        int channels = 1;
        List<Convolution2d> front = new ArrayList<>();
        List<ResidualBlock> back = new ArrayList<>();
        for (String line : text.lines().filter(l -> !l.startsWith("#")).toList()) {
            try (Scanner words = new Scanner(line).useLocale(Locale.ROOT)) {
                String layer = words.next();
                switch (layer) {
                    case "gain" -> gain = words.nextDouble();
                    case "conv" -> {
                        int outputs = words.nextInt();
                        front.add(Convolution2d.read(
                                weights, outputs, channels, words.nextInt(), words.nextInt(), words.nextInt()));
                        channels = outputs;
                    }
                    case "block" -> back.add(ResidualBlock.read(weights, channels, words.nextInt(), words.nextInt()));
                    case "out" -> {
                        Convolution1d out = Convolution1d.read(weights, words.nextInt(), channels, 1, 1);
                        return new NetworkShape(gain, List.copyOf(front), List.copyOf(back), out);
                    }
                    default -> throw new IllegalStateException("unknown layer: " + line);
                }
            }
        }
        throw new IllegalStateException("the network has no last layer");
    }
}
