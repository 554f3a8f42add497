package cuelead.practice;

import cuelead.dance.Count;
import cuelead.plan.Call;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Where a take goes on from another one of the same calls that has some of them at other times, so that each is heard once. */
final class Handover {
    private final Take next;
    private final long fromFrame;

    /** What a call is for; several of a kind for one beat are told apart by their order. */
    private record Aim(Call.Kind kind, OptionalDouble beatSeconds, Optional<Count> count, int number) {}

    /** Frames within which it cannot be gone over: from one after the first to the last. */
    private record Span(long first, long last) {
        boolean contains(long frame) {
            return first < frame && frame <= last;
        }
    }

    private Handover(Take next, long fromFrame) {
        this.next = next;
        this.fromFrame = fromFrame;
    }

    /**
     * The first place at which neither is saying anything and both have said the same; where that comes too late, the
     * earliest, and what has been said is not said again.
     *
     * @param earliestFrame on the way of both
     * @param latestFrame   not before that
     */
    static Handover of(Take left, Take next, long earliestFrame, long latestFrame) {
        Map<Aim, SpokenCall> before = byAim(left);
        Map<Aim, SpokenCall> after = byAim(next);
        List<Span> closed = new ArrayList<>();
        before.values().forEach(call -> closed.add(said(call)));
        after.values().forEach(call -> closed.add(said(call)));
        after.forEach((aim, call) -> {
            if (before.containsKey(aim)) {
                closed.add(between(before.get(aim), call));
            }
        });
        long agreed = firstOpen(closed, earliestFrame);
        long at = agreed <= latestFrame ? agreed : earliestFrame;
        Set<SpokenCall> said = new HashSet<>();
        before.forEach((aim, call) -> {
            if (call.startFrame() < at
                    && after.containsKey(aim)
                    && after.get(aim).startFrame() >= at) {
                said.add(after.get(aim));
            }
        });
        return new Handover(said.isEmpty() ? next : next.without(said), at);
    }

    private static Map<Aim, SpokenCall> byAim(Take take) {
        Map<Aim, SpokenCall> calls = new HashMap<>();
        for (SpokenCall spoken : take.calls()) {
            Call call = spoken.call();
            int number = 1;
            Aim aim = new Aim(call.kind(), call.beatSeconds(), call.count(), number);
            while (calls.containsKey(aim)) {
                number++;
                aim = new Aim(call.kind(), call.beatSeconds(), call.count(), number);
            }
            calls.put(aim, spoken);
        }
        return calls;
    }

    private static Span said(SpokenCall call) {
        return new Span(call.startFrame(), call.startFrame() + call.clip().samples().length - 1);
    }

    private static Span between(SpokenCall one, SpokenCall other) {
        return new Span(Math.min(one.startFrame(), other.startFrame()), Math.max(one.startFrame(), other.startFrame()));
    }

    private static long firstOpen(List<Span> closed, long earliest) {
        long at = earliest;
        long before;
        do {
            before = at;
            for (Span span : closed) {
                at = span.contains(at) ? span.last() + 1 : at;
            }
        } while (at > before);
        return at;
    }

    /** The take to go on with. */
    Take next() {
        return next;
    }

    /** From where. */
    long fromFrame() {
        return fromFrame;
    }
}
