package cuelead.sound;

import cuelead.dsp.Limiter;
import java.util.EnumSet;

/**
 * What is heard: music, calls and clicks of a plan, added up and kept under the true-peak ceiling. The same mix
 * goes to speakers, file and tests. A seek is a new mix that starts at another frame; its samples are those that
 * a mix from the beginning has there.
 *
 * <p>Not thread-safe. Reading is realtime-safe.
 */
public final class Mix implements Sound {
    /** EBU R 128 allows -1 dBTP; meters differ by a few tenths between the samples, and dither adds its share. */
    static final double CEILING_DBTP = -1.3;

    private final Sound limited;
    private final long startFrame;
    private long readFrames;

    /** What becomes of a call that has already begun where the mix starts. */
    public enum BegunCalls {
        /** It sounds from its middle. */
        CUT_IN,
        /** It is left out, and the music does not dip for it. */
        LEFT_OUT
    }

    /** The whole plan. */
    public Mix(MixPlan plan) {
        this(plan, plan.fromFrame(), BegunCalls.CUT_IN);
    }

    /** @param startFrame the frame of the song to begin with; held within the plan */
    public Mix(MixPlan plan, long startFrame, BegunCalls begunCalls) {
        long start = Math.max(plan.fromFrame(), Math.min(plan.toFrame(), startFrame));
        long memory = new Limiter(plan.rate(), CEILING_DBTP).memoryFrames();
        long leadIn = Math.min(memory, start - plan.fromFrame());
        MixPlan heard = begunCalls == BegunCalls.CUT_IN ? plan : plan.withoutClipsBefore(start);
        Sound sum = new StemMix(heard, EnumSet.allOf(StemMix.Stem.class), start - leadIn);
        this.limited = new Limited(sum, plan.rate(), CEILING_DBTP, leadIn);
        this.startFrame = start;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        int read = limited.read(interleaved, frames);
        readFrames += read;
        return read;
    }

    /** The frame of the song that is read next. */
    public long nextFrame() {
        return startFrame + readFrames;
    }
}
