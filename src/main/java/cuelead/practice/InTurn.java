package cuelead.practice;

import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.function.Function;

/**
 * Mixes one after the other, each faded in and out over {@value #FADE_SECONDS} s where it meets another, so that music
 * that is cut does not click. Each is made when its turn comes, so this is for files, not for the audio thread.
 */
final class InTurn implements Sound {
    private static final double FADE_SECONDS = 0.01;

    private final List<MixPlan> plans;
    private final Function<MixPlan, Sound> part;
    private final int fadeFrames;
    private int next;
    private Sound now = (interleaved, frames) -> 0;
    private long lengthFrames;
    private long readFrames;

    /** @param part what is heard of each */
    InTurn(SampleRate rate, List<MixPlan> plans, Function<MixPlan, Sound> part) {
        this.plans = List.copyOf(plans);
        this.part = part;
        fadeFrames = rate.framesIn(FADE_SECONDS);
    }

    @Override
    public int read(float[] interleaved, int frames) {
        float[] piece = new float[frames * CHANNELS];
        int done = 0;
        while (done < frames) {
            int got = now.read(piece, frames - done);
            if (got == 0) {
                if (next == plans.size()) {
                    return done;
                }
                begin(plans.get(next));
                continue;
            }
            fade(piece, got);
            System.arraycopy(piece, 0, interleaved, done * CHANNELS, got * CHANNELS);
            done += got;
            readFrames += got;
        }
        return done;
    }

    private void begin(MixPlan plan) {
        next++;
        now = part.apply(plan);
        lengthFrames = plan.toFrame() - plan.fromFrame();
        readFrames = 0;
    }

    private void fade(float[] piece, int frames) {
        for (int frame = 0; frame < frames; frame++) {
            long at = readFrames + frame;
            long toEdge =
                    Math.min(next == 1 ? fadeFrames : at, next == plans.size() ? fadeFrames : lengthFrames - 1 - at);
            if (toEdge < fadeFrames) {
                float gain = (float) toEdge / fadeFrames;
                piece[frame * CHANNELS] *= gain;
                piece[frame * CHANNELS + 1] *= gain;
            }
        }
    }
}
