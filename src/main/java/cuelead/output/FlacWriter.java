package cuelead.output;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import net.sourceforge.javaflacencoder.FLACEncoder;
import net.sourceforge.javaflacencoder.StreamConfiguration;

/** Writes one FLAC file (RFC 9639) of 16 bits, dithered as a WAV file is: the two hold equal samples. */
final class FlacWriter implements TrackWriter {
    private static final int BITS = 16;
    private static final int BLOCK_FRAMES = 4096;

    private final FLACEncoder encoder = new FLACEncoder();
    private final TpdfDither dither = new TpdfDither();
    private final FlacOutput output;
    private final TrackTags tags;

    FlacWriter(SeekableByteChannel channel, SampleRate rate, TrackTags tags) {
        this.tags = tags;
        output = new FlacOutput(channel);
        encoder.setStreamConfiguration(
                new StreamConfiguration(Sound.CHANNELS, BLOCK_FRAMES, BLOCK_FRAMES, rate.hz(), BITS));
        encoder.setOutputStream(output);
    }

    @Override
    public void begin() throws IOException {
        encoder.openFLACStream();
        output.endHead(VorbisComment.block(tags));
    }

    @Override
    public void write(float[] samples, int from, int count) throws IOException {
        int[] whole = new int[count];
        for (int i = 0; i < count; i++) {
            whole[i] = dither.quantize(samples[from + i]);
        }
        encoder.addSamples(whole, count / Sound.CHANNELS);
        encoder.encodeSamples(encoder.fullBlockSamplesAvailableToEncode(), false);
    }

    @Override
    public void end() throws IOException {
        encoder.encodeSamples(encoder.samplesAvailableToEncode(), true);
        output.flush();
    }
}
