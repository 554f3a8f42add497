package cuelead.voice;

import cuelead.time.SampleRate;
import java.util.List;

/**
 * One spoken call: mono samples that know when they are felt.
 *
 * <p>All times are seconds from the clip's first sample. The perceptual centre follows Marcus 1981 ("Acoustic
 * determinants of perceptual center (P-center) location", Perception and Psychophysics 30): onset + 0.65 (vowel
 * - onset) + 0.25 (end - vowel), all three of the stressed syllable.
 *
 * <p>The array is this clip's own: nobody changes it after construction.
 */
public final class Clip {
    private final String words;
    private final SampleRate rate;
    private final float[] samples;
    private final double onsetSeconds;
    private final double centreSeconds;
    private final double endSeconds;
    private final List<Phone> phones;

    /** One sound of the words, lower case without stress digit; silence is {@code pau}. */
    public record Phone(String name, double startSeconds, double endSeconds) {}

    /**
     * @param samples mono, full scale = 1; handed over to the clip
     * @param onsetSeconds  first audible moment
     * @param centreSeconds the perceptual centre
     * @param endSeconds    last audible moment
     * @param phones        what is said when; may be empty (recorded words)
     */
    public Clip(
            String words,
            SampleRate rate,
            float[] samples,
            double onsetSeconds,
            double centreSeconds,
            double endSeconds,
            List<Phone> phones) {
        this.words = words;
        this.rate = rate;
        this.samples = samples;
        this.onsetSeconds = onsetSeconds;
        this.centreSeconds = centreSeconds;
        this.endSeconds = endSeconds;
        this.phones = List.copyOf(phones);
    }

    public String words() {
        return words;
    }

    public SampleRate rate() {
        return rate;
    }

    /** Mono samples; not to be changed. */
    public float[] samples() {
        return samples;
    }

    public double onsetSeconds() {
        return onsetSeconds;
    }

    public double centreSeconds() {
        return centreSeconds;
    }

    public double endSeconds() {
        return endSeconds;
    }

    public List<Phone> phones() {
        return phones;
    }
}
