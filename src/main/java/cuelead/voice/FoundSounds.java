package cuelead.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The perceptual centre of a word whose sounds were found in a recording one by one. */
public final class FoundSounds {
    private FoundSounds() {}

    /**
     * The centre of its stressed syllable, on the time line of the sounds.
     *
     * @param text   what is said: lower-case words with single spaces
     * @param sounds in order, without pauses
     * @return empty when there is no vowel among them
     */
    public static OptionalDouble centreSeconds(String text, List<Clip.Phone> sounds) {
        if (sounds.isEmpty()) {
            return OptionalDouble.empty();
        }
        int vowelsBefore = SpelledSyllables.stressed(text);
        List<SpokenPhone> spoken = new ArrayList<>();
        for (Clip.Phone sound : sounds) {
            boolean isVowel = SpeechSounds.isVowel(sound.name());
            boolean isStressed = isVowel && vowelsBefore == 0;
            spoken.add(new SpokenPhone(sound.name(), sound.startSeconds(), sound.endSeconds(), isStressed, 0));
            vowelsBefore -= isVowel ? 1 : 0;
        }
        double onset = sounds.get(0).startSeconds();
        double end = sounds.get(sounds.size() - 1).endSeconds();
        return StressedSyllable.of(spoken, onset, end)
                .map(syllable -> OptionalDouble.of(syllable.centreSeconds()))
                .orElse(OptionalDouble.empty());
    }
}
