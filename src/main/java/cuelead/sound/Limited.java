package cuelead.sound;

import cuelead.dsp.Limiter;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * A sound behind a true-peak limiter whose delay is taken out again: frame n of this is frame n of the source,
 * only never too loud, and there are as many.
 *
 * <p>Not thread-safe. Realtime-safe; the first read also reads the look-ahead.
 */
final class Limited implements Sound {
    private static final int CHUNK_FRAMES = 1024;

    private final Sound source;
    private final Limiter limiter;
    private final float[] scratch = new float[CHUNK_FRAMES * CHANNELS];
    private long skippedFrames;
    private long framesIn;
    private long framesOut;
    private boolean sourceEnded;

    /** @param leadInFrames frames of the source that are heard by the limiter only, so that it knows what came before */
    Limited(Sound source, SampleRate rate, double ceilingDbtp, long leadInFrames) {
        this.source = source;
        limiter = new Limiter(rate, ceilingDbtp);
        skippedFrames = leadInFrames + limiter.delayFrames();
        framesIn = -leadInFrames;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        while (skippedFrames > 0) {
            int run = (int) Math.min(skippedFrames, CHUNK_FRAMES);
            advance(scratch, run);
            skippedFrames -= run;
        }
        advance(interleaved, frames);
        int out = sourceEnded ? (int) Math.min(frames, framesIn - framesOut) : frames;
        framesOut += out;
        return out;
    }

    private void advance(float[] interleaved, int frames) {
        int got = source.read(interleaved, frames);
        framesIn += got;
        if (got < frames) {
            sourceEnded = true;
            Arrays.fill(interleaved, got * CHANNELS, frames * CHANNELS, 0);
        }
        limiter.process(interleaved, frames);
    }
}
