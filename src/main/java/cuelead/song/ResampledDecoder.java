package cuelead.song;

import cuelead.dsp.Resampler;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.util.Arrays;

/** Another decoder at another rate, resampled as it streams: only a short window of the original is held. */
final class ResampledDecoder implements Decoder {
    private static final int BLOCK_FRAMES = 4_096;

    private final Decoder original;
    private final SampleRate rate;
    private final Resampler resampler;
    private final long lengthFrames;
    private final float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
    private final float[] output;
    private float[] window;
    private long windowStart;
    private int windowFrames;
    private long framesDone;

    ResampledDecoder(Decoder original, SampleRate rate) {
        this.original = original;
        this.rate = rate;
        this.resampler = new Resampler(original.rate(), rate);
        this.lengthFrames = resampler.framesOut(original.lengthFrames());
        this.output = new float[BLOCK_FRAMES * Sound.CHANNELS];
        this.window = new float[0];
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public long lengthFrames() {
        return lengthFrames;
    }

    @Override
    public int read(float[] stereo, int frames) throws IOException {
        int wanted = (int) Math.min(frames, lengthFrames - framesDone);
        int done = 0;
        while (done < wanted) {
            int run = Math.min(wanted - done, BLOCK_FRAMES);
            fillWindow(framesDone, framesDone + run);
            resampler.stereo(window, windowStart, windowFrames, output, run, framesDone);
            System.arraycopy(output, 0, stereo, done * Sound.CHANNELS, run * Sound.CHANNELS);
            done += run;
            framesDone += run;
        }
        return done;
    }

    /** Lets go of the original's frames that are no longer needed and reads those that are needed next. */
    private void fillWindow(long fromOutput, long toOutput) throws IOException {
        long needFrom = Math.max(0, resampler.inputFrameOf(fromOutput) - resampler.reachFrames());
        long needTo = Math.min(original.lengthFrames(), resampler.inputFrameOf(toOutput) + resampler.reachFrames() + 1);
        int kept = (int) Math.max(0, windowStart + windowFrames - needFrom);
        int needed = (int) Math.max(kept, needTo - needFrom) + BLOCK_FRAMES;
        if (window.length < needed * Sound.CHANNELS) {
            window = Arrays.copyOf(window, needed * Sound.CHANNELS);
        }
        int dropped = windowFrames - kept;
        System.arraycopy(window, dropped * Sound.CHANNELS, window, 0, kept * Sound.CHANNELS);
        windowStart += dropped;
        windowFrames = kept;
        while (windowStart + windowFrames < needTo) {
            int got = original.read(block, BLOCK_FRAMES);
            if (got == 0) {
                break;
            }
            System.arraycopy(block, 0, window, windowFrames * Sound.CHANNELS, got * Sound.CHANNELS);
            windowFrames += got;
        }
    }

    @Override
    public void close() throws IOException {
        original.close();
    }
}
