package cuelead.rehearse;

import cuelead.time.SampleRate;
import cuelead.voice.Mark;
import cuelead.voice.MonoSound;
import cuelead.voice.TakeVerdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The perceptual centres of words whose places in a take are known, as those of recorded words are marked. */
final class Centres {
    /** Room around a word, as far as its neighbours leave it. */
    private static final double AROUND_SECONDS = 0.3;

    private final MonoSound take;

    Centres(MonoSound take) {
        this.take = take;
    }

    /** The same words with their centres. */
    List<HeardWord> of(List<HeardWord> words) {
        List<HeardWord> centred = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            double from = i == 0 ? 0 : words.get(i - 1).endSeconds();
            double to = i + 1 < words.size() ? words.get(i + 1).startSeconds() : take.lengthSeconds();
            centred.add(centred(words.get(i), from, to));
        }
        return centred;
    }

    private HeardWord centred(HeardWord word, double from, double to) {
        SampleRate rate = take.rate();
        int first = rate.framesIn(Math.max(from, Math.max(0, word.startSeconds() - AROUND_SECONDS)));
        int end = Math.min(take.frames(), rate.framesIn(Math.min(to, word.endSeconds() + AROUND_SECONDS)));
        MonoSound cut = new MonoSound(Arrays.copyOfRange(take.samples(), first, Math.max(first + 1, end)), rate);
        return TakeVerdict.of(cut, word.word())
                .mark()
                .map(Mark::centreSeconds)
                .map(seconds -> word.centredAt(rate.secondsAt(first) + seconds))
                .orElse(word.centredAt(word.startSeconds()));
    }
}
