package cuelead.practice;

import cuelead.plan.CallPlan;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.List;

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
        CallPlan plan = plan(timeline, extent, manner);
        List<SpokenCall> calls = plan.calls().stream()
                .map(call -> SpokenCall.of(call, words.clip(call.words())))
                .toList();
        return new Take(extent, plan, calls, mixes.make(calls, timeline.grid(), manner));
    }

    /** What would be called, without speaking it. */
    CallPlan plan(Timeline timeline, Extent extent, Manner manner) {
        double speed = manner.ground().map().lastSpeed().ratio();
        return CallPlan.make(timeline, extent, manner.calls().atPace(speed), words);
    }
}
