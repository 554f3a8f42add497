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
        int[] starts = starts(word);
        List<Clip.Phone> sounds = new ArrayList<>();
        for (int i = 0; i < phones.size(); i++) {
            sounds.add(new Clip.Phone(
                    PhoneOdds.name(phones.get(i)), begins(phones, starts, i), begins(phones, starts, i + 1)));
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
        int[] starts = starts(word);
        for (int i = 0; i < phones.size(); i++) {
            Arrays.fill(sounds, starts[i], starts[i + 1], isSure ? phones.get(i) : UNKNOWN);
        }
    }

    private int[] starts(HeardWord word) {
        int from = Math.max(0, frame(word.startSeconds() - AROUND_SECONDS));
        int to = Math.min(odds.frames(), frame(word.endSeconds() + AROUND_SECONDS));
        return new PhoneAlignment(odds, words.get(word.word()).phones()).starts(from, to);
    }

    private static int frame(double seconds) {
        return (int) Math.round(seconds / MelBands.STEP_SECONDS);
    }

    /**
     * When a sound begins: where the sound before it and itself are equally likely, between the last frame of the one and the
     * first of the other, so that times are finer than frames are apart.
     */
    private double begins(List<Integer> phones, int[] starts, int sound) {
        int frame = starts[sound];
        double middle = frame - 0.5;
        boolean isBetween = frame > 0 && frame < odds.frames();
        if (!isBetween) {
            return middle * MelBands.STEP_SECONDS;
        }
        int before = sound == 0 ? PhoneOdds.SILENCE : phones.get(sound - 1);
        int after = sound == phones.size() ? PhoneOdds.SILENCE : phones.get(sound);
        double last = (double) odds.at(before, frame - 1) - odds.at(after, frame - 1);
        double first = (double) odds.at(before, frame) - odds.at(after, frame);
        boolean isCrossed = last > 0 && first < 0;
        return (isCrossed ? frame - 1 + last / (last - first) : middle) * MelBands.STEP_SECONDS;
    }
}
