package cuelead.practice;

import cuelead.plan.CallPlan;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.report.Refused;
import cuelead.sound.MixPlan;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Set;

/** Makes takes: calls decided, spoken and mixed. Used on one thread. */
final class TakeMaker {
    private final VoiceTimes words;
    private final MixMaker mixes;

    TakeMaker(VoiceTimes words, MixMaker mixes) {
        this.words = words;
        this.mixes = mixes;
    }

    SampleRate rate() {
        return mixes.rate();
    }

    boolean hasMusic() {
        return mixes.hasMusic();
    }

    /** The same where nothing but clicks is danced to. */
    TakeMaker withoutMusic() {
        return new TakeMaker(words, mixes.withoutMusic());
    }

    /** Waits until music at another speed can be read to its end. */
    void awaitStrokes() {
        mixes.awaitStrokes();
    }

    /** Throws what kept the voice from speaking, if anything did. */
    void check() throws Refused {
        words.check();
    }

    /**
     * A take; its lead is that of the speed of the music.
     *
     * @param timeline of the manner's ground
     */
    Take make(Timeline timeline, Extent extent, Manner manner) {
        Set<String> guessed = words.guessesFromNow();
        CallPlan plan = plan(timeline, extent, manner);
        List<SpokenCall> calls = spoken(plan).stream()
                .filter(call -> !guessed.contains(call.call().words()))
                .toList();
        return new Take(extent, plan, calls, mixes.make(calls, timeline.grid(), manner), guessed);
    }

    /** The same; waits until every word of it is spoken. */
    Take makeSpoken(Timeline timeline, Extent extent, Manner manner) {
        Take take = make(timeline, extent, manner);
        while (!take.guessed().isEmpty()) {
            words.learnNow(take.guessed());
            take = make(timeline, extent, manner);
        }
        return take;
    }

    /** How a take will sound when the words are there that it had to guess: they stand in the mix as tones. */
    MixPlan expected(Take take, Manner manner) {
        return take.guessed().isEmpty()
                ? take.mix()
                : mixes.make(spoken(take.plan()), take.timeline().grid(), manner);
    }

    private List<SpokenCall> spoken(CallPlan plan) {
        return plan.calls().stream()
                .map(call -> SpokenCall.of(call, words.clip(call.words())))
                .toList();
    }

    /** What would be called, without speaking it. */
    CallPlan plan(Timeline timeline, Extent extent, Manner manner) {
        double speed = manner.ground().map().lastSpeed().ratio();
        return CallPlan.make(timeline, extent, manner.calls().atPace(speed), words);
    }
}
