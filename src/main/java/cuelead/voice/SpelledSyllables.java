package cuelead.voice;

import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * How many syllables English words have and on which they are stressed, told from their spelling: a rule of thumb (a
 * syllable a group of vowel letters, a final "e" mostly silent; from memory), with the trade's exceptions.
 */
final class SpelledSyllables {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    /** The "e" of "side" and "sides" but not of "shuffle", "shuffles" and "touches"; the "ed" of "crossed". */
    private static final Pattern SILENT_END =
            Pattern.compile("(?<![aeiouy]|[^aeiouy]l)e$|(?<![aeioucsxz]|[cgsz]h|[cg]|[^aeiouy]l)es$|(?<![aeioutd])ed$");

    private static final Map<String, Integer> EXCEPTIONS = Map.of(
            "chasse",
            2,
            "chasses",
            2,
            "diagonal",
            4,
            "diagonals",
            4,
            "sideways",
            2,
            "the",
            1,
            "o'clock",
            2,
            "being",
            2);

    /** Words of dancing that are stressed on their second syllable. */
    private static final Set<String> LATE_STRESS = Set.of(
            "about",
            "across",
            "again",
            "ahead",
            "along",
            "apart",
            "around",
            "away",
            "before",
            "begin",
            "behind",
            "beside",
            "between",
            "o'clock",
            "prepare",
            "recover",
            "relax",
            "repeat",
            "reverse",
            "together",
            "unwind");

    /** "rock", "cross", "weave", "sway", "one", "quarter", "unwind", "away": no sudden beginning of the stressed vowel. */
    private static final Pattern GLIDE = Pattern.compile("(?:[^aeiouy]*[rlw][aeiouy]|one|qu|unwi|aw|ar|al).*");

    private SpelledSyllables() {}

    /** @param text lower-case words with single spaces */
    static int count(String text) {
        int count = 0;
        for (String word : text.split(" ")) {
            count += EXCEPTIONS.getOrDefault(word, byRule(word));
        }
        return count;
    }

    /** Which syllable a phrase is felt on, from 0: the stressed one of its first word. */
    static int stressed(String text) {
        return LATE_STRESS.contains(text.split(" ")[0]) ? 1 : 0;
    }

    /** Whether its stressed vowel rises slowly out of an "r", "l" or "w". */
    static boolean beginsWithGlide(String text) {
        return GLIDE.matcher(text).matches();
    }

    private static int byRule(String word) {
        String heard = SILENT_END.matcher(word).replaceFirst("");
        return Math.max(1, (int) VOWELS.matcher(heard).results().count());
    }
}
