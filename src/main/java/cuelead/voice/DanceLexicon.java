package cuelead.voice;

import com.sun.speech.freetts.lexicon.Lexicon;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * The synthesizer's dictionary, repaired for the dance floor. The kevin voice has no recording of the vowel of
 * "touch" and says "totch": every such vowel becomes the short {@code ax}, which it says well. A few words of the trade
 * are spelled out because the dictionary lacks them, takes them for another word ("close" the door, not close to), or
 * stresses them on another syllable ("sideways").
 */
final class DanceLexicon implements Lexicon {
    private static final Map<String, String> OURS = Map.ofEntries(
            Map.entry("close", "k l ow1 z"),
            Map.entry("chasse", "sh ae1 s ey"),
            Map.entry("chasses", "sh ae1 s ey z"),
            Map.entry("restart", "r iy1 s t aa r t"),
            Map.entry("restarts", "r iy1 s t aa r t s"),
            Map.entry("clockwise", "k l aa1 k w ay z"),
            Map.entry("o'clock", "ax k l aa1 k"),
            Map.entry("sideways", "s ay1 d w ey z"));

    private final Lexicon dictionary;
    private final Map<String, List<String>> users;

    DanceLexicon(Lexicon dictionary, Pronunciations pronunciations) {
        this.dictionary = dictionary;
        this.users = pronunciations.sounds();
    }

    @Override
    public String[] getPhones(String word, String partOfSpeech) {
        return getPhones(word, partOfSpeech, true);
    }

    @Override
    public String[] getPhones(String word, String partOfSpeech, boolean guessUnknown) {
        List<String> users = this.users.get(word);
        if (users != null) {
            return repaired(users.toArray(new String[0]));
        }
        String ours = OURS.get(word);
        return ours != null ? ours.split(" ") : repaired(dictionary.getPhones(word, partOfSpeech, guessUnknown));
    }

    private static String[] repaired(String[] phones) {
        if (phones == null) {
            return null; // the dictionary's way of saying that it does not know the word
        }
        String[] repaired = phones.clone();
        for (int i = 0; i < repaired.length; i++) {
            if (repaired[i].startsWith("ah")) {
                repaired[i] = "ax" + repaired[i].substring("ah".length());
            }
        }
        return repaired;
    }

    @Override
    public void addAddendum(String word, String partOfSpeech, String[] phones) {
        dictionary.addAddendum(word, partOfSpeech, phones);
    }

    @Override
    public void removeAddendum(String word, String partOfSpeech) {
        dictionary.removeAddendum(word, partOfSpeech);
    }

    @Override
    @SuppressWarnings("rawtypes") // as the interface has it
    public boolean isSyllableBoundary(List syllablePhones, String[] wordPhones, int current) {
        return dictionary.isSyllableBoundary(syllablePhones, wordPhones, current);
    }

    @Override
    public void load() throws IOException {
        dictionary.load();
    }

    @Override
    public boolean isLoaded() {
        return dictionary.isLoaded();
    }
}
