package cuelead.practice;

import cuelead.plan.CallPlan;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import java.util.List;

/**
 * What is made of a practice for one manner of playing it.
 *
 * @param extent the piece of the dance that is called
 * @param plan   its calls
 * @param calls  the same with their clips
 * @param mix    how it sounds
 */
record Take(Extent extent, CallPlan plan, List<SpokenCall> calls, MixPlan mix) {
    Take {
        calls = List.copyOf(calls);
    }

    Timeline timeline() {
        return plan.timeline();
    }

    /** The calls that are heard whole. */
    List<SpokenCall> heardCalls() {
        return calls.stream().filter(this::isHeardWhole).toList();
    }

    private boolean isHeardWhole(SpokenCall call) {
        return call.startFrame() >= mix.fromFrame()
                && call.startFrame() + call.clip().samples().length <= mix.toFrame();
    }

    Take with(MixPlan other) {
        return new Take(extent, plan, calls, other);
    }

    /** The same at other levels. */
    Take with(Levels levels) {
        return with(mix.withLevels(levels));
    }
}
