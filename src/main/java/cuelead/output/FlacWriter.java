package cuelead.output;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import net.sourceforge.javaflacencoder.EncodingConfiguration;
import net.sourceforge.javaflacencoder.FLACEncoder;
import net.sourceforge.javaflacencoder.StreamConfiguration;

/** Writes one FLAC file (RFC 9639) of 16 bits, rounded as a WAV file is: the two hold equal samples. */
final class FlacWriter implements TrackWriter {
    private static final int BITS = 16;
    private static final int BLOCK_FRAMES = 4096;

    /** Behind the mark {@code fLaC} and the head of {@code STREAMINFO}. */
    private static final int BLOCK_LENGTHS_AT = 8;

    /** The encoder's predictors fail on fewer frames in a block; they look back 32 at most. */
    private static final int FEWEST_TO_PREDICT = 64;

    private final FLACEncoder encoder = new FLACEncoder();
    private final TpdfDither dither = new TpdfDither();
    private final FlacOutput output;
    private final TrackTags tags;
    private final Rounding rounding;

    /** Handed on when more comes, since the encoder can end with a block but not with nothing after one. */
    private final int[] block = new int[BLOCK_FRAMES * Sound.CHANNELS];

    private int filled;

    FlacWriter(SeekableByteChannel channel, SampleRate rate, TrackTags tags, Rounding rounding) {
        this.tags = tags;
        this.rounding = rounding;
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
        for (int i = from; i < from + count; i++) {
            if (filled == block.length) {
                encode(Place.AMID);
            }
            block[filled++] = rounding.round(samples[i], dither);
        }
    }

    private enum Place {
        AMID,
        LAST
    }

    private void encode(Place place) throws IOException {
        int frames = filled / Sound.CHANNELS;
        encoder.addSamples(block, frames);
        encoder.encodeSamples(frames, place == Place.LAST);
        filled = 0;
    }

    @Override
    public void end() throws IOException {
        if (filled < FEWEST_TO_PREDICT * Sound.CHANNELS) {
            EncodingConfiguration asTheyAre = new EncodingConfiguration();
            asTheyAre.setSubframeType(EncodingConfiguration.SubframeType.VERBATIM);
            encoder.setEncodingConfiguration(asTheyAre);
        }
        if (filled > 0) {
            encode(Place.LAST);
        }
        tellBlockLength();
        output.flush();
    }

    /**
     * Tells shortest and longest block: the encoder counts the last one too, which RFC 9639 (section 8.2) leaves out of
     * the shortest.
     */
    private void tellBlockLength() throws IOException {
        output.seek(BLOCK_LENGTHS_AT);
        for (int i = 0; i < 2; i++) {
            output.write((byte) (BLOCK_FRAMES >> Byte.SIZE));
            output.write((byte) BLOCK_FRAMES);
        }
    }
}
