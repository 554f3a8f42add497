package cuelead.voice;

import cuelead.dsp.KWeighting;
import cuelead.dsp.Resampler;
import cuelead.time.SampleRate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes every word equal in the mix, whoever spoke it: cuts off what is not the word, converts to one sample rate, makes
 * it clear ({@link Clarity}), fades the cuts, and sets one loudness. Thread-safe.
 */
final class ClipEditor {
    /** Loudness of every clip over its audible span, K-weighted, as heard from one speaker. */
    static final double LOUDNESS_LUFS = -23;

    private static final double BEFORE_SECONDS = 0.005;
    /** Ends 2 ms before the onset, so that the burst of a plosive keeps its edge. */
    private static final double FADE_IN_SECONDS = 0.003;

    private static final double AFTER_SECONDS = 0.020;
    private static final double FADE_OUT_SECONDS = 0.015;

    private final SampleRate rate;
    private final Clarity clarity;
    private final Map<SampleRate, Resampler> resamplers = new ConcurrentHashMap<>();

    ClipEditor(SampleRate rate, Clarity clarity) {
        this.rate = rate;
        this.clarity = clarity;
    }

    /**
     * A word cut out of a longer sound.
     *
     * @param sound              at the editor's rate
     * @param audible            where it can be heard
     * @param plain              the same before it was made clear, on the same time line
     * @param sourceStartSeconds the time in the source of the first sample; below 0 where silence was put before it
     */
    record Edited(MonoSound sound, AudibleSpan audible, MonoSound plain, double sourceStartSeconds) {}

    /** @param word the frames of the source to keep; a little more is kept on both sides */
    Edited edit(MonoSound source, AudibleSpan word) {
        SampleRate from = source.rate();
        int start = word.startFrame() - from.framesIn(BEFORE_SECONDS);
        float[] cut = cut(source.samples(), start, word.endFrame() + from.framesIn(AFTER_SECONDS));
        MonoSound plain = new MonoSound(convert(cut, from), rate);
        MonoSound sound = clarity.of(plain);
        fade(sound.samples(), rate);
        AudibleSpan audible =
                AudibleSpan.of(sound).orElseThrow(() -> new IllegalArgumentException("no sound in frames " + word));
        level(sound.samples(), audible);
        return new Edited(sound, audible, plain, from.secondsAt(start));
    }

    /** Frames from start to end of the source, with silence where it has none. */
    private static float[] cut(float[] source, int start, int end) {
        float[] cut = new float[end - start];
        int from = Math.max(0, start);
        System.arraycopy(source, from, cut, from - start, Math.min(end, source.length) - from);
        return cut;
    }

    private static void fade(float[] samples, SampleRate rate) {
        int in = rate.framesIn(FADE_IN_SECONDS);
        int out = rate.framesIn(FADE_OUT_SECONDS);
        for (int i = 0; i < Math.min(in, samples.length); i++) {
            samples[i] *= raisedCosine(i, in);
        }
        for (int i = 0; i < Math.min(out, samples.length); i++) {
            samples[samples.length - 1 - i] *= raisedCosine(i, out);
        }
    }

    private static float raisedCosine(int frame, int frames) {
        return (float) (0.5 - 0.5 * Math.cos(Math.PI * frame / frames));
    }

    private float[] convert(float[] samples, SampleRate from) {
        if (from.equals(rate)) {
            return samples;
        }
        Resampler resampler = resamplers.computeIfAbsent(from, source -> new Resampler(source, rate));
        float[] converted = new float[Math.toIntExact(resampler.framesOut(samples.length))];
        for (int i = 0; i < converted.length; i++) {
            converted[i] = resampler.sample(samples, 1, 0, 0, samples.length, i);
        }
        return converted;
    }

    /** Sets the loudness, or the peak to full scale where the loudness would take it above. */
    private void level(float[] samples, AudibleSpan audible) {
        float[] heard = new float[audible.endFrame() - audible.startFrame()];
        System.arraycopy(samples, audible.startFrame(), heard, 0, heard.length);
        double gain = Math.pow(10, (LOUDNESS_LUFS - KWeighting.loudnessLufs(heard, rate)) / 20);
        double peak = 0;
        for (float sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        float limited = (float) Math.min(gain, 1 / peak);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Math.max(-1, Math.min(1, samples[i] * limited));
        }
    }
}
