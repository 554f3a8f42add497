package cuelead.plan;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Every call, in order of time; none overlaps the next.
 *
 * @param timeline what they are for
 * @param settings how they were chosen
 * @param calls    in order
 * @param leftOut  what was not called, and why
 */
public record CallPlan(Timeline timeline, CallSettings settings, List<Call> calls, List<LeftOut> leftOut) {
    /** Least seconds from the end of a call to its beat; people cannot react faster. */
    public static final double LEAST_ROOM_SECONDS = 0.3;
    /** Room in which most dancers answer with ease. */
    public static final double EASY_ROOM_SECONDS = 0.5;

    public CallPlan {
        calls = List.copyOf(calls);
        leftOut = List.copyOf(leftOut);
    }

    /** Decides the calls of a timeline. */
    public static CallPlan make(Timeline timeline, CallSettings settings, WordTimes words) {
        return make(timeline, Extent.whole(timeline), settings, words);
    }

    /** Decides the calls of a piece of a timeline. */
    public static CallPlan make(Timeline timeline, Extent extent, CallSettings settings, WordTimes words) {
        return CallPlanner.plan(timeline, extent, settings, words);
    }

    /** Words that were wanted and that the voice cannot say. */
    public Set<String> unspeakable() {
        Set<String> words = new TreeSet<>();
        for (LeftOut out : leftOut) {
            if (out.reason() == LeftOut.Reason.NOT_SPEAKABLE) {
                words.add(out.words());
            }
        }
        return words;
    }

    /** Calls that leave less than {@link #EASY_ROOM_SECONDS} to move. */
    public List<Call> tight() {
        return calls.stream()
                .filter(call -> call.roomSeconds().orElse(EASY_ROOM_SECONDS) < EASY_ROOM_SECONDS)
                .toList();
    }
}
