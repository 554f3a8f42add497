package cuelead.voice;

import com.sun.speech.freetts.audio.AudioPlayer;
import java.io.ByteArrayOutputStream;
import javax.sound.sampled.AudioFormat;

/** Takes the synthesizer's sound instead of a sound device: 16-bit big-endian mono. */
final class PcmCatcher implements AudioPlayer {
    private static final int BYTES_PER_SAMPLE = 2;
    private static final float FULL_SCALE = 32768;

    private final ByteArrayOutputStream caught = new ByteArrayOutputStream();
    private AudioFormat format = new AudioFormat(16_000, 16, 1, true, true);

    void clear() {
        caught.reset();
    }

    int frames() {
        return caught.size() / BYTES_PER_SAMPLE;
    }

    /** What was said since the last clear, full scale = 1. */
    float[] samples() {
        byte[] bytes = caught.toByteArray();
        float[] samples = new float[bytes.length / BYTES_PER_SAMPLE];
        for (int i = 0; i < samples.length; i++) {
            int high = bytes[2 * i];
            int low = bytes[2 * i + 1] & 0xff;
            samples[i] = (high << 8 | low) / FULL_SCALE;
        }
        return samples;
    }

    @Override
    public boolean write(byte[] audio) {
        return write(audio, 0, audio.length);
    }

    @Override
    public boolean write(byte[] audio, int offset, int size) {
        caught.write(audio, offset, size);
        return true;
    }

    @Override
    public void setAudioFormat(AudioFormat format) {
        this.format = format;
    }

    @Override
    public AudioFormat getAudioFormat() {
        return format;
    }

    @Override
    public boolean drain() {
        return true;
    }

    @Override
    public boolean end() {
        return true;
    }

    @Override
    public float getVolume() {
        return 1;
    }

    @Override
    public long getTime() {
        return 0;
    }

    @Override
    public void begin(int size) {}

    @Override
    public void pause() {}

    @Override
    public void resume() {}

    @Override
    public void reset() {}

    @Override
    public void cancel() {}

    @Override
    public void close() {}

    @Override
    public void setVolume(float volume) {}

    @Override
    public void resetTime() {}

    @Override
    public void startFirstSampleTimer() {}

    @Override
    public void showMetrics() {}
}
