package cuelead.voice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;

/**
 * How a user wants words to be said: in other words ("chasse" as "sha say"), or by the sounds that the built-in voice
 * is made of ("hook" as "hh uh1 k"). Words are those that a {@link SpeakableText} gives. Immutable.
 */
public final class Pronunciations {
    public static final Pronunciations NONE = new Pronunciations(Map.of(), Map.of());

    private final Map<String, String> inWords;
    private final Map<String, List<String>> inSounds;

    /**
     * Pronunciations of words and phrases.
     *
     * @param inWords  what to say instead of a word or phrase
     * @param inSounds the sounds of a single word, lower case, a stressed vowel with "1" behind it
     */
    Pronunciations(Map<String, String> inWords, Map<String, List<String>> inSounds) {
        this.inWords = Map.copyOf(inWords);
        this.inSounds = Map.copyOf(inSounds);
    }

    /** Sounds of single words. */
    Map<String, List<String>> sounds() {
        return inSounds;
    }

    /** The text with other words where the user wants them; the longest phrase first, and none twice. */
    String respelled(String text) {
        List<String> words = new ArrayList<>(List.of(text.split(" ")));
        List<String> phrases = new ArrayList<>(inWords.keySet());
        phrases.sort(Comparator.comparingInt(Pronunciations::length).reversed().thenComparing(phrase -> phrase));
        StringBuilder said = new StringBuilder();
        while (!words.isEmpty()) {
            String phrase = first(phrases, words);
            said.append(inWords.getOrDefault(phrase, phrase)).append(' ');
            words = words.subList(length(phrase), words.size());
        }
        return said.toString().strip();
    }

    /** The phrase that the words begin with, or else their first word. */
    private static String first(List<String> phrases, List<String> words) {
        for (String phrase : phrases) {
            int length = length(phrase);
            if (length <= words.size() && phrase.equals(String.join(" ", words.subList(0, length)))) {
                return phrase;
            }
        }
        return words.get(0);
    }

    private static int length(String phrase) {
        return phrase.split(" ").length;
    }

    /** Whether they say of any of the words how it is spoken. */
    boolean tell(String text) {
        return !respelled(text).equals(text)
                || List.of(text.split(" ")).stream().anyMatch(inSounds::containsKey);
    }

    /** Safe in a file name; equal for equal pronunciations, and empty where there are none. */
    String key() {
        if (inWords.isEmpty() && inSounds.isEmpty()) {
            return "";
        }
        CRC32 sum = new CRC32();
        sum.update((new TreeMap<>(inWords) + " " + new TreeMap<>(inSounds)).getBytes(StandardCharsets.UTF_8));
        return "-said-" + Long.toHexString(sum.getValue());
    }
}
