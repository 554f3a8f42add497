package cuelead.output;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;

/**
 * The first moment of a sound that may begin in its middle: half a cosine, so that nothing jumps. As short as the fades
 * of the sound library, so that no beat is moved; a sound that begins in silence is left as it is.
 */
final class FadeIn {
    static final double SECONDS = 0.0015;

    /** -60 dB of full scale. */
    private static final float QUIET = 0.001f;

    private final float[] gains;

    FadeIn(SampleRate rate) {
        gains = new float[rate.framesIn(SECONDS)];
        for (int i = 0; i < gains.length; i++) {
            gains[i] = (float) (0.5 - 0.5 * Math.cos(Math.PI * i / gains.length));
        }
    }

    /** Fades the beginning of a stereo block that is longer than the fade. Realtime-safe. */
    void shape(float[] interleaved) {
        if (Math.abs(interleaved[0]) <= QUIET && Math.abs(interleaved[1]) <= QUIET) {
            return;
        }
        for (int i = 0; i < gains.length; i++) {
            interleaved[Sound.CHANNELS * i] *= gains[i];
            interleaved[Sound.CHANNELS * i + 1] *= gains[i];
        }
    }
}
