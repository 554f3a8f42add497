package cuelead.practice;

import cuelead.plan.Call;
import cuelead.voice.Clip;

/**
 * A call and the clip that speaks it.
 *
 * @param startFrame frame of the song at which the clip's first sample sounds
 */
public record SpokenCall(Call call, Clip clip, long startFrame) {
    /** The call with its clip placed so that its perceptual centre sounds when the plan says. */
    static SpokenCall of(Call call, Clip clip) {
        return new SpokenCall(call, clip, clip.rate().frameAt(call.centreSeconds() - clip.centreSeconds()));
    }

    /** The same call, so much later. */
    SpokenCall laterBy(long frames) {
        return new SpokenCall(call.laterBy(clip.rate().secondsAt(frames)), clip, startFrame + frames);
    }
}
