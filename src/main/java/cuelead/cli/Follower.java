package cuelead.cli;

import cuelead.plan.Call;
import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import java.util.List;
import java.util.Optional;

/** What is to be read at a moment of the practice: where in the dance, the call now and the call next. Immutable. */
final class Follower {
    private final Timeline timeline;
    private final List<Call> calls;

    /** @param calls in order of their start */
    Follower(Timeline timeline, List<Call> calls) {
        this.timeline = timeline;
        this.calls = List.copyOf(calls);
    }

    /** {@code Wall 2 (3 o'clock)  S3  count 4   [rock]  next: recover}. */
    String lineAt(double songSeconds) {
        String now = nowAt(songSeconds).map(call -> "[" + call.words() + "]").orElse("[ ]");
        String next =
                nextAfter(songSeconds).map(call -> "  next: " + call.words()).orElse("");
        return Told.minutes(Math.max(0, songSeconds)) + "  " + placeAt(songSeconds) + "   " + now + next;
    }

    /** The calls whose first sound lies in a span of time, its end left out. */
    List<Call> startingIn(double fromSeconds, double toSeconds) {
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

    private String placeAt(double songSeconds) {
        Optional<DancedCount> last = timeline.ending().last();
        if (last.isPresent() && songSeconds >= timeline.endSeconds()) {
            return "The dance is over";
        }
        return timeline.at(songSeconds).map(Follower::place).orElseGet(() -> beforeTheDance(songSeconds));
    }

    private static String place(DancedCount count) {
        Run run = count.run();
        String where = run.isTag() ? "Tag after wall " + run.wall() : "Wall " + run.wall();
        return where + " (" + Told.facing(count.facingAfter()) + ")  "
                + count.section().name() + "  count " + count.count().label();
    }

    private String beforeTheDance(double songSeconds) {
        double beats = timeline.countOne()
                .since(timeline.grid().positionAt(songSeconds))
                .toDecimal();
        return "Starts in " + Told.number(Math.max(1, (long) Math.ceil(beats)), "beat");
    }
}
