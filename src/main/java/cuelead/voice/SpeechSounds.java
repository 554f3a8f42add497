package cuelead.voice;

import java.util.Set;

/** The sounds of English as the built-in voice names them (those of the CMU pronouncing dictionary, lower case). */
final class SpeechSounds {
    static final Set<String> VOWELS = Set.of(
            "aa", "ae", "ah", "ao", "aw", "ax", "axr", "ay", "eh", "er", "ey", "ih", "ix", "iy", "ow", "oy", "uh",
            "uw");
    private static final Set<String> CONSONANTS = Set.of(
            "b", "ch", "d", "dh", "f", "g", "hh", "jh", "k", "l", "m", "n", "ng", "p", "r", "s", "sh", "t", "th", "v",
            "w", "y", "z", "zh");
    /** For a user who wrote another. */
    static final String LISTED = "Vowels are aa (rock), ae (back), ah or ax (touch), ao (walk), aw (out), ay (side), eh"
            + " (step), er (turn), ey (sway), ih (kick), iy (heel), ow (toe), oy (point), uh (hook), uw (two), with 1"
            + " behind the stressed one; consonants b ch d dh f g hh jh k l m n ng p r s sh t th v w y z zh.";

    private SpeechSounds() {}

    /** Whether it is a sound, a vowel with or without its stress (0, 1 or 2). */
    static boolean isOne(String sound) {
        return CONSONANTS.contains(sound) || isVowel(sound);
    }

    static boolean isVowel(String sound) {
        return VOWELS.contains(sound.replaceAll("[012]$", ""));
    }
}
