package cuelead.rehearse;

import cuelead.dsp.speech.MelBands;
import cuelead.dsp.speech.PhoneOdds;
import cuelead.voice.Clip;
import cuelead.voice.FoundSounds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The perceptual centres of words whose places in a take are known, from where their sounds lie. */
final class Centres {
    /** Room around a word: the search may have given its edges to the silence. */
    private static final double AROUND_SECONDS = 0.08;

    private static final int UNKNOWN = -1;

    private final PhoneOdds odds;
    private final Map<String, Pronounced> words = new HashMap<>();

    /** @param words all that can be heard */
    Centres(PhoneOdds odds, List<Pronounced> words) {
        this.odds = odds;
        words.forEach(word -> this.words.put(word.word(), word));
    }

    /** The same word with its centre and edges; where it has no vowel, it is felt at its beginning. */
    HeardWord centred(HeardWord word) {
        List<Integer> phones = words.get(word.word()).phones();
        double[] starts = alignment(word).expectedStarts(first(word), end(word));
        List<Clip.Phone> sounds = new ArrayList<>();
        for (int i = 0; i < phones.size(); i++) {
            sounds.add(new Clip.Phone(PhoneOdds.name(phones.get(i)), begins(starts[i]), begins(starts[i + 1])));
        }
        double centre = FoundSounds.centreSeconds(word.word(), sounds).orElse(word.startSeconds());
        return new HeardWord(word.word(), word.startSeconds(), centre, word.endSeconds());
    }

    /**
     * Writes down which sound of a word each of its frames has.
     *
     * @param sounds    by frame; changed
     * @param isSure    whether it is that word; if not, its sounds are unknown (-1)
     */
    void label(HeardWord word, int[] sounds, boolean isSure) {
        List<Integer> phones = words.get(word.word()).phones();
        int[] starts = alignment(word).starts(first(word), end(word));
        for (int i = 0; i < phones.size(); i++) {
            Arrays.fill(sounds, starts[i], starts[i + 1], isSure ? phones.get(i) : UNKNOWN);
        }
    }

    private PhoneAlignment alignment(HeardWord word) {
        return new PhoneAlignment(odds, words.get(word.word()).phones());
    }

    private int first(HeardWord word) {
        return Math.max(0, frame(word.startSeconds() - AROUND_SECONDS));
    }

    private int end(HeardWord word) {
        return Math.min(odds.frames(), frame(word.endSeconds() + AROUND_SECONDS));
    }

    private static int frame(double seconds) {
        return (int) Math.round(seconds / MelBands.STEP_SECONDS);
    }

    /** A frame stands for the half step to both sides. */
    private static double begins(double frame) {
        return (frame - 0.5) * MelBands.STEP_SECONDS;
    }
}
