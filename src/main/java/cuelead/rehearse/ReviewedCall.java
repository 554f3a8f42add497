package cuelead.rehearse;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A planned call and what became of it, or something said that was not planned.
 *
 * @param planned      empty for what was extra
 * @param heard        empty for what was missed; in seconds of the take
 * @param heardSeconds its perceptual centre in seconds of the song, after the round trip
 */
public record ReviewedCall(
        CallKind kind, Optional<PlannedCall> planned, Optional<HeardWord> heard, OptionalDouble heardSeconds) {
    static ReviewedCall missed(PlannedCall planned) {
        return new ReviewedCall(CallKind.MISSED, Optional.of(planned), Optional.empty(), OptionalDouble.empty());
    }

    static ReviewedCall extra(HeardWord heard, double heardSeconds) {
        return new ReviewedCall(CallKind.EXTRA, Optional.empty(), Optional.of(heard), OptionalDouble.of(heardSeconds));
    }

    static ReviewedCall called(PlannedCall planned, HeardWord heard, double heardSeconds) {
        CallKind kind = planned.word().equals(heard.word())
                ? CallKind.ofError(1_000 * (heardSeconds - planned.seconds()))
                : CallKind.WRONG;
        return new ReviewedCall(kind, Optional.of(planned), Optional.of(heard), OptionalDouble.of(heardSeconds));
    }

    /** How much too late it was in milliseconds, negative: early; empty for what was missed or extra. */
    public OptionalDouble errorMs() {
        return planned.isPresent() && heardSeconds.isPresent()
                ? OptionalDouble.of(
                        1_000 * (heardSeconds.getAsDouble() - planned.get().seconds()))
                : OptionalDouble.empty();
    }

    /** When it should have been heard, or when it was: seconds of the song. */
    public double seconds() {
        return planned.map(PlannedCall::seconds).orElseGet(heardSeconds::getAsDouble);
    }
}
