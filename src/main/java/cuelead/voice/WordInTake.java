package cuelead.voice;

import java.util.Arrays;
import java.util.Optional;

/**
 * Where a known word lies in a take from a real room, and on which syllable it is felt: without the breath before it, the
 * smack of the lips and the room's noise.
 *
 * <p>First its vowels: the strongest sound in the {@link RoomNoise gated} band of vowels that is {@link Periodicity
 * periodic}, and what is near and not much weaker. (Scott 1998, "The point of P-centres", Psychological Research 61, finds
 * the centre of words in the rise of such a band; so do Cummins and Port 1998; Gordon 1987, "The perceptual attack time of
 * musical tones", J. Acoust. Soc. Am. 82, likewise in how energy rises and not in where it begins.) From there outwards,
 * consonants are all that stands out of the noise, as far as the {@link SpelledEdges spelling} lets them; the
 * {@link HeardSyllables} between give vowel and end of the stressed syllable, and Marcus' formula its centre.
 *
 * @param span     from the first to behind the last sound of the word
 * @param syllable the one that it is felt on, in seconds of the take; empty when no vowel is heard
 */
record WordInTake(AudibleSpan span, Optional<StressedSyllable> syllable) {
    private static final double VOWEL_LOW_HZ = 510;
    private static final double VOWEL_HIGH_HZ = 3_150;
    /** The first formant and the pitch lie here in every vowel, and next to nothing of a hiss. */
    private static final double HUM_LOW_HZ = 200;

    private static final double HUM_HIGH_HZ = 1_270;
    private static final double HISS_LOW_HZ = 2_700;
    private static final double HISS_HIGH_HZ = 9_500;
    private static final double HUM_WEIGHT = 3;
    /** Where the loudest stands out less, the noise may hide a consonant. */
    private static final double HIDING_DB = 30;

    private static final double SMOOTHING_SECONDS = 0.036;
    /** What is weaker than this part of the strongest is no vowel of the word (20 dB). */
    private static final double WEAKEST_VOWEL = 0.1;
    /** In a loud room what is weaker than this part is not sure to be one. */
    private static final double SURE_VOWEL = 0.3;
    /** Where nothing periodic has this part of the strongest, it is whispered: anything may be a vowel. */
    private static final double WHISPERED = 0.2;

    /** A vowel goes on with this part of the strongest even where the pitch glides too fast to be periodic. */
    private static final double STRONG = 0.4;

    private static final double VOICED_NEAR_SECONDS = 0.02;
    private static final double GAP_IN_SYLLABLE_SECONDS = 0.2;
    private static final double GAP_IN_WORD_SECONDS = 0.34;
    private static final double GAP_IN_PHRASE_SECONDS = 0.45;
    /** Nothing behind the last vowel lasts longer. */
    private static final double LONGEST_AFTER_SECONDS = 0.35;
    /** An echo: behind the last 20 dB of a sound, only so much more is its own. */
    private static final double ECHO = 0.1;

    private static final double AFTER_ECHO_SECONDS = 0.03;
    private static final double PART_SECONDS = 0.02;

    /** The centre of the word: of its stressed syllable, or of the whole where no vowel is heard. */
    double centreSeconds(MonoSound take) {
        double start = take.rate().secondsAt(span.startFrame());
        double end = take.rate().secondsAt(span.endFrame());
        return syllable.orElse(new StressedSyllable(start, start, end)).centreSeconds();
    }

    /**
     * Finds it.
     *
     * @param take without rumble
     * @param text what is said: lower-case words with single spaces
     * @return empty when nothing sounds at all
     */
    static Optional<WordInTake> of(MonoSound take, String text) {
        BarkPowers powers = BarkPowers.of(take);
        double loudest = 0;
        for (int step = 0; step < powers.steps(); step++) {
            loudest = Math.max(loudest, powers.levelRms(step));
        }
        return loudest > 0 ? Optional.of(new Search(take, text, powers).found(take)) : Optional.empty();
    }

    /** The steps of a take, on the way from its vowels to its edges. */
    private static final class Search {
        private final BarkPowers powers;
        private final Standing standing;
        private final boolean isNoisy;
        private final double[] vowels;
        private final double[] periodicity;
        private final String text;
        private final SpelledEdges edges;

        Search(MonoSound take, String text, BarkPowers powers) {
            this.powers = powers;
            this.text = text;
            edges = SpelledEdges.of(text);
            RoomNoise noise = new RoomNoise(powers);
            isNoisy = noise.loudestDb() < HIDING_DB;
            standing = new Standing(powers, noise.excessDb());
            vowels = RoomNoise.amplitude(vowelPower(noise), SMOOTHING_SECONDS);
            periodicity = Periodicity.of(take, powers.steps());
        }

        /** Power in the band of vowels, as far as a voice hums below it: a "sh" is as strong there as a vowel. */
        private static double[] vowelPower(RoomNoise noise) {
            double[] power = noise.power(VOWEL_LOW_HZ, VOWEL_HIGH_HZ);
            double[] hum = noise.power(HUM_LOW_HZ, HUM_HIGH_HZ);
            double[] hiss = noise.power(HISS_LOW_HZ, HISS_HIGH_HZ);
            for (int i = 0; i < power.length; i++) {
                double humming = HUM_WEIGHT * hum[i];
                power[i] *= humming > 0 ? humming / (humming + hiss[i]) : 0;
            }
            return power;
        }

        WordInTake found(MonoSound take) {
            boolean[] voiced = voiced();
            Run nuclei = vowels(voiced);
            Run outer = HeardSyllables.vowels(vowels, voiced, nuclei, text).orElse(nuclei);
            int start = standing.before(
                    outer.first(), steps(edges.gapBeforeSeconds()), steps(edges.longestBeforeSeconds()));
            int last = standing.after(outer.last(), steps(edges.gapAfterSeconds()), steps(LONGEST_AFTER_SECONDS));
            if (isNoisy && outer.first() - start < steps(edges.before().leastSeconds())) {
                start = Math.max(0, outer.first() - steps(edges.before().usualSeconds()));
            }
            last = withoutEcho(outer.last(), last);
            if (isNoisy && last - outer.last() < steps(edges.after().leastSeconds())) {
                last = Math.min(
                        powers.steps() - 1, outer.last() + steps(edges.after().usualSeconds()));
            }
            Run word = new Run(start, last);
            int end = Math.min(take.frames(), take.rate().framesIn((word.last() + 1) * BarkPowers.STEP_SECONDS));
            int first = Math.min(end - 1, take.rate().framesIn(start * BarkPowers.STEP_SECONDS));
            return new WordInTake(new AudibleSpan(first, end), HeardSyllables.stressed(vowels, voiced, word, text));
        }

        /** From the first to the last step that is in a vowel of the word. */
        private Run vowels(boolean[] voiced) {
            int top = strongest(voiced);
            double weakest = weakest(vowels[top]);
            int gap = steps(gapSeconds());
            int first = top;
            for (int i = top; i >= 0 && first - i < gap; i--) {
                first = vowels[i] > weakest && voiced[i] ? i : first;
            }
            int last = top;
            for (int i = top; i < vowels.length && i - last < gap; i++) {
                last = vowels[i] > weakest && voiced[i] ? i : last;
            }
            return new Run(first, last);
        }

        private boolean[] voiced() {
            boolean[] voiced = new boolean[vowels.length];
            int near = steps(VOICED_NEAR_SECONDS);
            for (int i = 0; i < voiced.length; i++) {
                if (periodicity[i] > Periodicity.VOICED) {
                    Arrays.fill(voiced, Math.max(0, i - near), Math.min(voiced.length, i + near + 1), true);
                }
            }
            int any = 0;
            double most = 0;
            for (int i = 0; i < voiced.length; i++) {
                any = vowels[i] > vowels[any] ? i : any;
                most = voiced[i] ? Math.max(most, vowels[i]) : most;
            }
            boolean isWhispered = most < WHISPERED * vowels[any] || most == 0;
            if (isWhispered) {
                Arrays.fill(voiced, true);
            }
            goOnWhileStrong(voiced, STRONG * most);
            return voiced;
        }

        private void goOnWhileStrong(boolean[] voiced, double strong) {
            for (int i = 1; i < voiced.length; i++) {
                voiced[i] |= voiced[i - 1] && vowels[i] > strong;
            }
            for (int i = voiced.length - 2; i >= 0; i--) {
                voiced[i] |= voiced[i + 1] && vowels[i] > strong;
            }
        }

        private int strongest(boolean[] voiced) {
            int top = -1;
            for (int i = 0; i < vowels.length; i++) {
                top = voiced[i] && (top < 0 || vowels[i] > vowels[top]) ? i : top;
            }
            return top;
        }

        private double weakest(double strongest) {
            double[] sorted = vowels.clone();
            Arrays.sort(sorted);
            double inNoise = 2 * sorted[(int) (0.3 * sorted.length)];
            return Math.max(WEAKEST_VOWEL * strongest, Math.min(inNoise, SURE_VOWEL * strongest));
        }

        private double gapSeconds() {
            if (text.contains(" ")) {
                return GAP_IN_PHRASE_SECONDS;
            }
            return SpelledSyllables.count(text) > 1 ? GAP_IN_WORD_SECONDS : GAP_IN_SYLLABLE_SECONDS;
        }

        /** The last step of a word whose last sound dies away in the room. */
        private int withoutEcho(int from, int last) {
            int start = standing.lastPart(from, last, steps(PART_SECONDS));
            double loudest = 0;
            for (int i = start; i <= last; i++) {
                loudest = Math.max(loudest, powers.meanRms(i, steps(PART_SECONDS / 2)));
            }
            int end = last;
            while (end > start && !(powers.meanRms(end, steps(PART_SECONDS / 2)) > ECHO * loudest)) {
                end--;
            }
            return Math.min(last, end + steps(AFTER_ECHO_SECONDS));
        }

        private static int steps(double seconds) {
            return (int) Math.round(seconds / BarkPowers.STEP_SECONDS);
        }
    }
}
