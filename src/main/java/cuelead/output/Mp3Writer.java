package cuelead.output;

import cuelead.sound.Sound;
import de.sciss.jump3r.lowlevel.LameEncoder;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import javax.sound.sampled.AudioFormat;

/** Writes one MP3 file: its tag, a frame that tells players what to trim, and the sound. */
final class Mp3Writer implements TrackWriter {
    /** Two to three times as fast as the next better one; at this bit rate hardly another sound. */
    private static final int QUALITY = LameEncoder.QUALITY_MIDDLE;

    private final SeekableByteChannel channel;
    private final ByteBuffer tag;
    private final LameEncoder encoder;
    private final byte[] encoded;
    private final double gain;
    private final Mp3InfoFrame info;

    Mp3Writer(SeekableByteChannel channel, Mp3Layout layout, TrackTags tags) {
        this.channel = channel;
        tag = Id3Tag.bytes(tags);
        info = new Mp3InfoFrame(layout);
        gain = 1 / layout.encoderGain();
        int hz = layout.rate().hz();
        AudioFormat format = new AudioFormat(
                AudioFormat.Encoding.PCM_FLOAT,
                hz,
                Float.SIZE,
                Sound.CHANNELS,
                Float.BYTES * Sound.CHANNELS,
                hz,
                false);
        encoder = new LameEncoder(format, layout.kilobits(), LameEncoder.CHANNEL_MODE_JOINT_STEREO, QUALITY, false);
        encoded = new byte[encoder.getMP3BufferSize()];
    }

    @Override
    public void begin() throws IOException {
        Drain.into(channel, tag.duplicate());
    }

    @Override
    public void write(float[] samples, int from, int count) throws IOException {
        int most = encoder.getPCMBufferSize() / Float.BYTES;
        for (int done = 0; done < count; done += most) {
            encode(samples, from + done, Math.min(most, count - done));
        }
    }

    private void encode(float[] samples, int from, int count) throws IOException {
        ByteBuffer pcm = ByteBuffer.allocate(count * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = from; i < from + count; i++) {
            pcm.putFloat((float) (gain * samples[i]));
        }
        info.countSound(count / Sound.CHANNELS);
        put(encoder.encodeBuffer(pcm.array(), 0, pcm.capacity(), encoded));
    }

    @Override
    public void end() throws IOException {
        put(encoder.encodeFinish(encoded));
        encoder.close();
        channel.position(tag.remaining());
        Drain.into(channel, info.bytes());
    }

    private void put(int count) throws IOException {
        info.countStream(encoded, count);
        Drain.into(channel, ByteBuffer.wrap(encoded, 0, count));
    }
}
