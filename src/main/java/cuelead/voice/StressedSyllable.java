package cuelead.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The syllable that a call is felt on, in seconds of its clip.
 *
 * @param onsetSeconds start of the syllable
 * @param vowelSeconds start of its vowel
 * @param endSeconds   end of the syllable
 */
record StressedSyllable(double onsetSeconds, double vowelSeconds, double endSeconds) {
    /** Marcus 1981, equation 1, without its arbitrary constant. */
    private static final double VOWEL_WEIGHT = 0.65;

    private static final double END_WEIGHT = 0.25;

    /** Vowels of syllables that never carry stress. */
    private static final Set<String> REDUCED = Set.of("ax", "axr", "ix");

    /** The perceptual centre: onset + 0.65 (vowel - onset) + 0.25 (end - vowel). */
    double centreSeconds() {
        return onsetSeconds
                + VOWEL_WEIGHT * (vowelSeconds - onsetSeconds)
                + END_WEIGHT * (Math.max(endSeconds, vowelSeconds) - vowelSeconds);
    }

    /**
     * The stressed syllable of a clip's first word. The dictionary marks no stress on "behind" or "five": there it is
     * the first syllable with a full vowel, or the first at all ("the"). It begins with the
     * clip's onset or behind the vowel before it, and ends where the last consonant before the next vowel begins, or
     * with the clip.
     *
     * @param phones       in order, on the clip's time line; pauses count for nothing
     * @param onsetSeconds first audible moment of the clip
     * @param endSeconds   last audible moment of the clip
     * @return empty when there is no vowel
     */
    static Optional<StressedSyllable> of(List<SpokenPhone> phones, double onsetSeconds, double endSeconds) {
        List<SpokenPhone> spoken = new ArrayList<>(phones);
        spoken.removeIf(SpokenPhone::isPause);
        List<Integer> vowels = new ArrayList<>();
        for (int i = 0; i < spoken.size(); i++) {
            if (SpeechSounds.VOWELS.contains(spoken.get(i).name())) {
                vowels.add(i);
            }
        }
        if (vowels.isEmpty()) {
            return Optional.empty();
        }
        int which = stressed(spoken, vowels);
        int vowel = vowels.get(which);
        double onset =
                which == 0 ? onsetSeconds : spoken.get(vowels.get(which - 1)).endSeconds();
        double end = endSeconds;
        if (which + 1 < vowels.size()) {
            int lastConsonant = vowels.get(which + 1) - 1;
            end = lastConsonant > vowel
                    ? spoken.get(lastConsonant).startSeconds()
                    : spoken.get(vowel).endSeconds();
        }
        return Optional.of(
                new StressedSyllable(onset, Math.max(spoken.get(vowel).startSeconds(), onsetSeconds), end));
    }

    /** Which of the vowels: the marked one of the first word, else its first full one, else its first. */
    private static int stressed(List<SpokenPhone> spoken, List<Integer> vowels) {
        int firstWord = spoken.get(vowels.get(0)).word();
        int full = -1;
        for (int i = 0; i < vowels.size(); i++) {
            SpokenPhone vowel = spoken.get(vowels.get(i));
            if (vowel.word() != firstWord) {
                break;
            }
            if (vowel.stressed()) {
                return i;
            }
            if (full < 0 && !REDUCED.contains(vowel.name())) {
                full = i;
            }
        }
        return Math.max(0, full);
    }
}
