package cuelead.practice;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.function.Predicate;

/** Hums each word, at a length that is hard to guess; words that are not at hand only when it is told to answer. */
final class SlowVoice implements Voice {
    private static final double CENTRE_SECONDS = 0.06;

    private final SampleRate rate;
    private final Predicate<String> atHand;
    private final CountDownLatch answers = new CountDownLatch(1);
    private final Set<String> asked = ConcurrentHashMap.newKeySet();
    private final Set<String> unsayable;
    private volatile Optional<String> refusal = Optional.empty();

    SlowVoice(SampleRate rate, Predicate<String> atHand, Set<String> unsayable) {
        this.rate = rate;
        this.atHand = atHand;
        this.unsayable = unsayable;
    }

    /** From now on it answers. */
    void answer() {
        answers.countDown();
    }

    /** From now on it refuses. */
    void refuse(String sentence) {
        refusal = Optional.of(sentence);
        answers.countDown();
    }

    /** The words that it has been asked to say and that were not at hand. */
    Set<String> asked() {
        return asked;
    }

    @Override
    public boolean isAtHand(String words) {
        return atHand.test(words);
    }

    @Override
    public Optional<Clip> say(String words) throws Refused {
        if (!isAtHand(words)) {
            asked.add(words);
            try {
                answers.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        if (refusal.isPresent()) {
            throw new Refused(refusal.get());
        }
        return unsayable.contains(words) ? Optional.empty() : Optional.of(clip(words));
    }

    private Clip clip(String words) {
        double end = 0.2 + Math.floorMod(words.hashCode(), 60) / 100.0;
        float[] samples = new float[rate.framesIn(end)];
        for (int frame = 0; frame < samples.length; frame++) {
            samples[frame] = (float) (0.05 * Math.sin(2 * Math.PI * 300 * frame / rate.hz()));
        }
        return new Clip(words, rate, samples, 0, CENTRE_SECONDS, end, List.of());
    }
}
