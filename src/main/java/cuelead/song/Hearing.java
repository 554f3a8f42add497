package cuelead.song;

import cuelead.time.BeatGrid;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What was heard of a song's beat.
 *
 * @param beats  of its longest steady part
 * @param unsure stretches in which the beats may be wrong, in order
 * @param entrySeconds when the singer or the band come in after the intro, so that a dance may begin there; empty where
 *     it is not known
 */
public record Hearing(BeatGrid beats, List<Stretch> unsure, OptionalDouble entrySeconds) {
    public Hearing {
        unsure = List.copyOf(unsure);
    }

    /** A stretch of a song; seconds from its first frame. */
    public record Stretch(double fromSeconds, double toSeconds) {}

    /**
     * The same at other times.
     *
     * @param seconds where a time of these beats is in the other ones; rising
     */
    public Hearing timed(DoubleUnaryOperator seconds) {
        List<Stretch> moved = unsure.stream()
                .map(stretch -> new Stretch(
                        seconds.applyAsDouble(stretch.fromSeconds()), seconds.applyAsDouble(stretch.toSeconds())))
                .toList();
        OptionalDouble entry = entrySeconds.isPresent()
                ? OptionalDouble.of(seconds.applyAsDouble(entrySeconds.getAsDouble()))
                : entrySeconds;
        return new Hearing(beats.timed(seconds), moved, entry);
    }
}
