package cuelead.voice;

import cuelead.time.SampleRate;
import java.util.List;

/**
 * Takes the place of the clip of words that are not spoken yet, where calls are planned and loudness is forecast: about as
 * long, and as loud. Never to be heard.
 *
 * <p>The lengths are those of the words of dances as the built-in voice says them, told from their letters: after its
 * centre a clip is off by 0.11 s (standard deviation; 213 clips, 27 November 2026).
 */
public final class StandIn {
    private static final double BEFORE_SECONDS = 0.09;
    private static final double AFTER_SECONDS = 0.05;
    private static final double LETTER_SECONDS = 0.05;

    /** Of a tone at 1 kHz that is as loud as a clip: one at full scale has -3 LUFS (ITU-R BS.1770). */
    private static final double AMPLITUDE = Math.pow(10, (ClipEditor.LOUDNESS_LUFS + 3.01) / 20);

    private static final double TONE_HZ = 1_000;

    private StandIn() {}

    public static Clip of(String words, SampleRate rate) {
        long letters = words.chars().filter(Character::isLetterOrDigit).count();
        double end = BEFORE_SECONDS + AFTER_SECONDS + LETTER_SECONDS * letters;
        return new Clip(words, rate, tone(rate.framesIn(end), rate), 0, BEFORE_SECONDS, end, List.of());
    }

    /** Each sample from the two before it, which is far quicker than a sine each. */
    private static float[] tone(int frames, SampleRate rate) {
        double step = 2 * Math.PI * TONE_HZ / rate.hz();
        double turn = 2 * Math.cos(step);
        double before = -AMPLITUDE * Math.sin(step);
        double now = 0;
        float[] tone = new float[frames];
        for (int frame = 0; frame < frames; frame++) {
            tone[frame] = (float) now;
            double next = turn * now - before;
            before = now;
            now = next;
        }
        return tone;
    }
}
