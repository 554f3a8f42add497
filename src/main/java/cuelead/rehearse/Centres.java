package cuelead.rehearse;

import cuelead.dsp.speech.MelBands;
import cuelead.dsp.speech.PhoneOdds;
import cuelead.voice.Clip;
import cuelead.voice.FoundSounds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The perceptual centres of words whose places in a take are known, from where their sounds lie. */
final class Centres {
    /** Room around a word: the search may have given its edges to the silence. */
    private static final double AROUND_SECONDS = 0.08;

    private final PhoneOdds odds;
    private final Map<String, Pronounced> words = new HashMap<>();

    /** @param words all that can be heard */
    Centres(PhoneOdds odds, List<Pronounced> words) {
        this.odds = odds;
        words.forEach(word -> this.words.put(word.word(), word));
    }

    /** The same word with its centre and edges; where it has no vowel, it is felt at its beginning. */
    HeardWord centred(HeardWord word) {
        int from = Math.max(0, frame(word.startSeconds() - AROUND_SECONDS));
        int to = Math.min(odds.frames(), frame(word.endSeconds() + AROUND_SECONDS));
        List<Integer> phones = words.get(word.word()).phones();
        int[] starts = new PhoneAlignment(odds, phones).starts(from, to);
        List<Clip.Phone> sounds = new ArrayList<>();
        for (int i = 0; i < phones.size(); i++) {
            sounds.add(new Clip.Phone(PhoneOdds.name(phones.get(i)), begins(starts[i]), begins(starts[i + 1])));
        }
        double centre = FoundSounds.centreSeconds(word.word(), sounds).orElse(word.startSeconds());
        return new HeardWord(word.word(), word.startSeconds(), centre, word.endSeconds());
    }

    private static int frame(double seconds) {
        return (int) Math.round(seconds / MelBands.STEP_SECONDS);
    }

    /** A frame stands for the half step to both sides. */
    private static double begins(int frame) {
        return (frame - 0.5) * MelBands.STEP_SECONDS;
    }
}
