package cuelead.song;

import cuelead.dsp.Resampler;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;

/** A decoder's sound as one channel (the mean of both) at another rate; only a short window of it is held. */
final class MonoStream {
    private static final int BLOCK_FRAMES = 8_192;

    private final Decoder decoder;
    private final Resampler resampler;
    private final float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
    private final float[] window;
    private long windowStart;
    private int windowFrames;
    private long framesDone;
    private boolean hasEnded;

    MonoStream(Decoder decoder, SampleRate rate) {
        this.decoder = decoder;
        this.resampler = new Resampler(decoder.rate(), rate);
        this.window = new float[2 * resampler.reachFrames() + 2 * BLOCK_FRAMES];
    }

    long lengthFrames() {
        return resampler.framesOut(decoder.lengthFrames());
    }

    long framesDone() {
        return framesDone;
    }

    /**
     * The next frames.
     *
     * @param mono overwritten from its front
     * @return how many there are; 0 at the end
     */
    int read(float[] mono) throws IOException {
        readBlock();
        long last = hasEnded
                ? lengthFrames()
                : resampler.framesOut(Math.max(0, windowStart + windowFrames - resampler.reachFrames()));
        int count = (int) Math.min(mono.length, Math.min(lengthFrames(), last) - framesDone);
        resampler.mono(window, windowStart, windowFrames, mono, count, framesDone);
        framesDone += count;
        letGo();
        return count;
    }

    /** Fills the window where there is room. */
    private void readBlock() throws IOException {
        while (!hasEnded && windowFrames + BLOCK_FRAMES <= window.length) {
            int got = decoder.read(block, BLOCK_FRAMES);
            for (int i = 0; i < got; i++) {
                window[windowFrames + i] = (block[2 * i] + block[2 * i + 1]) / 2;
            }
            windowFrames += got;
            hasEnded = got == 0;
        }
    }

    private void letGo() {
        long needed = resampler.inputFrameOf(framesDone) - resampler.reachFrames();
        int dropped = (int) Math.max(0, Math.min(windowFrames, needed - windowStart));
        System.arraycopy(window, dropped, window, 0, windowFrames - dropped);
        windowStart += dropped;
        windowFrames -= dropped;
    }
}
