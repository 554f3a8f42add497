package cuelead.song;

import cuelead.time.BeatGrid;
import java.util.List;
import java.util.OptionalDouble;

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
}
