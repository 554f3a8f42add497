package cuelead.steer;

import cuelead.plan.Call;
import java.util.List;
import java.util.Optional;

/** The calls around a moment of the practice. Immutable. */
public final class Follower {
    private final List<Call> calls;

    /** @param calls in order of their start */
    public Follower(List<Call> calls) {
        this.calls = List.copyOf(calls);
    }

    /** The calls whose first sound lies in a span of time, its end left out. */
    public List<Call> startingIn(double fromSeconds, double toSeconds) {
        return calls.stream()
                .filter(call -> call.startsSeconds() >= fromSeconds && call.startsSeconds() < toSeconds)
                .toList();
    }

    /** The last call that has begun, until the beat that it is for has come. */
    Optional<Call> nowAt(double songSeconds) {
        int begun = begunAt(songSeconds);
        if (begun == 0) {
            return Optional.empty();
        }
        Call last = calls.get(begun - 1);
        return Optional.of(last).filter(call -> songSeconds < call.beatSeconds().orElse(call.endsSeconds()));
    }

    Optional<Call> nextAfter(double songSeconds) {
        int begun = begunAt(songSeconds);
        return begun < calls.size() ? Optional.of(calls.get(begun)) : Optional.empty();
    }

    private int begunAt(double songSeconds) {
        int low = 0;
        int high = calls.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (calls.get(middle).startsSeconds() <= songSeconds) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
