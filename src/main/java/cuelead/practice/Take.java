package cuelead.practice;

import cuelead.plan.CallPlan;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is made of a practice for one manner of playing it.
 *
 * @param extent the piece of the dance that is called
 * @param plan   its calls
 * @param calls  the same with their clips, without those of guessed words
 * @param mix    how it sounds
 * @param guessed words that were not spoken yet when it was planned; their lengths are guesses
 */
record Take(Extent extent, CallPlan plan, List<SpokenCall> calls, MixPlan mix, Set<String> guessed) {
    Take {
        calls = List.copyOf(calls);
        guessed = Set.copyOf(guessed);
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
        return new Take(extent, plan, calls, other, guessed);
    }

    /** The same without some of its calls. */
    Take without(Set<SpokenCall> unheard) {
        Set<Long> starts = unheard.stream().map(SpokenCall::startFrame).collect(Collectors.toSet());
        return new Take(
                extent,
                plan,
                calls.stream().filter(call -> !unheard.contains(call)).toList(),
                mix.withClips(mix.clips().stream()
                        .filter(clip -> !starts.contains(clip.startFrame()))
                        .toList()),
                guessed);
    }

    /** The same, which ends where another one was broken off, if it was. */
    Take endingLike(Take other) {
        MixPlan its = other.mix();
        long wholeTo = MixPlan.whole(its.rate(), its.music(), its.clips(), its.clicks(), its.levels())
                .toFrame();
        return its.toFrame() < wholeTo ? with(mix.between(mix.fromFrame(), its.toFrame())) : this;
    }

    /** The same at other levels. */
    Take with(Levels levels) {
        return with(mix.withLevels(levels));
    }
}
