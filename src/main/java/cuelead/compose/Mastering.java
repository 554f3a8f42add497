package cuelead.compose;

import cuelead.dsp.KWeighting;
import cuelead.time.SampleRate;

/**
 * Brings a song to its loudness, under its ceiling. Gain and limiting go round a few times, since limiting takes
 * some loudness away again.
 */
final class Mastering {
    private static final double TARGET_LUFS = -15;
    /** Leaves room for what lies between samples and for what lossy coding adds. */
    private static final float CEILING = (float) Math.pow(10, -3.2 / 20);

    private static final int ROUNDS = 4;
    private static final double FADE_SECONDS = 1.2;

    private final SampleRate rate;
    private final Limiter limiter;

    Mastering(SampleRate rate) {
        this.rate = rate;
        this.limiter = new Limiter(rate, CEILING);
    }

    /**
     * Levels a song.
     *
     * @param rendered interleaved stereo, left as it is
     * @param seconds  what of it is wanted; its end fades
     */
    float[] master(float[] rendered, double seconds) {
        int frames = (int) Math.min(rendered.length / Renderer.CHANNELS, rate.frameAt(seconds));
        float[] song = faded(rendered, frames);
        double gain = 1;
        float[] mastered = song;
        for (int round = 0; round < ROUNDS; round++) {
            gain *= Math.pow(10, (TARGET_LUFS - loudnessLufs(mastered)) / 20);
            mastered = limiter.limit(scaled(song, gain));
        }
        return mastered;
    }

    private float[] faded(float[] rendered, int frames) {
        float[] song = new float[frames * Renderer.CHANNELS];
        int fade = rate.framesIn(FADE_SECONDS);
        for (int i = 0; i < song.length; i++) {
            int left = frames - i / Renderer.CHANNELS;
            song[i] = left < fade ? rendered[i] * left / fade : rendered[i];
        }
        return song;
    }

    private static float[] scaled(float[] samples, double gain) {
        float[] scaled = new float[samples.length];
        for (int i = 0; i < samples.length; i++) {
            scaled[i] = (float) (samples[i] * gain);
        }
        return scaled;
    }

    /** Ungated; a song has no pauses to speak of. */
    private double loudnessLufs(float[] stereo) {
        double power = 0;
        for (int channel = 0; channel < Renderer.CHANNELS; channel++) {
            float[] mono = new float[stereo.length / Renderer.CHANNELS];
            for (int i = 0; i < mono.length; i++) {
                mono[i] = stereo[i * Renderer.CHANNELS + channel];
            }
            power += KWeighting.powerOfLufs(KWeighting.loudnessLufs(mono, rate));
        }
        return KWeighting.lufsOfPower(power);
    }
}
